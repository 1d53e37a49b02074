import type { Face } from '../../sheets/index.ts'

/** Where a face is kept and what it is called outside. */
export interface FaceFile {
  /** Path of the TTF among the installed packages. */
  readonly path: string
  /** The family a browser or an operating system knows it by. */
  readonly family: 'Spectral' | 'Spectral SC' | 'Fira Sans Condensed'
  readonly weight: 400 | 500 | 600 | 700
  readonly style: 'normal' | 'italic'
}

/** The file of every face: SIL Open Font License 1.1, shipped whole in the packages named in the path. */
export const faceFiles: Readonly<Record<Face, FaceFile>> = {
  Spectral: spectral(400, 'Regular'),
  'Spectral Italic': spectral(400, 'Regular_Italic'),
  'Spectral Medium': spectral(500, 'Medium'),
  'Spectral Medium Italic': spectral(500, 'Medium_Italic'),
  'Spectral SemiBold': spectral(600, 'SemiBold'),
  'Spectral Bold': spectral(700, 'Bold'),
  'Spectral SC': smallCapitals(400, 'Regular'),
  'Spectral SC Medium': smallCapitals(500, 'Medium'),
  'Spectral SC SemiBold': smallCapitals(600, 'SemiBold'),
  'Fira Sans Condensed': fira(400, 'Regular'),
  'Fira Sans Condensed Italic': fira(400, 'Regular_Italic'),
  'Fira Sans Condensed Medium': fira(500, 'Medium'),
  'Fira Sans Condensed SemiBold': fira(600, 'SemiBold'),
  'Fira Sans Condensed Bold': fira(700, 'Bold'),
  'Fira Sans Condensed SemiBold Italic': fira(600, 'SemiBold_Italic'),
}

function spectral(weight: FaceFile['weight'], cut: string): FaceFile {
  return faceFile('spectral', 'Spectral', weight, cut)
}

function smallCapitals(weight: FaceFile['weight'], cut: string): FaceFile {
  return faceFile('spectral-sc', 'Spectral SC', weight, cut)
}

function fira(weight: FaceFile['weight'], cut: string): FaceFile {
  return faceFile('fira-sans-condensed', 'Fira Sans Condensed', weight, cut)
}

function faceFile(
  folder: string,
  family: FaceFile['family'],
  weight: FaceFile['weight'],
  cut: string,
): FaceFile {
  const stem = `${family.replaceAll(' ', '')}_${weight}${cut}`
  return {
    path: `@expo-google-fonts/${folder}/${weight}${cut}/${stem}.ttf`,
    family,
    weight,
    style: cut.endsWith('Italic') ? 'italic' : 'normal',
  }
}
