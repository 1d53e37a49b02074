import { createHash } from 'node:crypto'
import { toPdf } from '../../src/press/pdf/index.ts'
import { toSvg } from '../../src/press/svg/index.ts'
import { installedFonts } from './fonts.ts'
import { everyMark, taggedBook } from './press-scene.ts'

// Run as a program of its own, under another clock, language or name of the machine.
const fonts = await installedFonts()
const digest = (bytes: string | Uint8Array) => createHash('sha256').update(bytes).digest('hex')
console.log(digest(await toSvg(everyMark(fonts), fonts)))
console.log(digest(await toPdf(taggedBook(fonts), fonts)))
