import type { Rig, Station } from '../../rig/index.ts'

/**
 * A station's name as part of a file's name: small letters a to z, figures and hyphens, and no two alike in one
 * rig, whatever letters its name is written in.
 */
export function stationStem(station: Station, rig: Rig): string {
  const place = rig.stations.findIndex(({ name }) => name === station.name)
  const stem = plain(station.name)
  const isTaken = rig.stations.slice(0, Math.max(0, place)).some(({ name }) => plain(name) === stem)
  if (stem !== '' && !isTaken) return stem
  return [stem, `station-${place + 1}`].filter(part => part !== '').join('-')
}

// Letters lose their accents; whatever is then left beyond a to z and figures becomes a hyphen.
const plain = (name: string): string =>
  name
    .toLowerCase()
    .normalize('NFKD')
    .replace(/\p{M}/gu, '')
    .replace(/[^a-z0-9]+/g, '-')
    .replace(/^-+|-+$/g, '')
    .slice(0, 60)
    .replace(/-+$/, '')
