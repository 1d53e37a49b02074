import { readFileSync } from 'node:fs'
import { join } from 'node:path'
import { Command, CommanderError, Option } from 'commander'
import type { PaperKind } from '../sheets/papers.ts'
import { inWords, isComplaint } from './complaint.ts'
import type { FindOptions } from './find.ts'
import { home } from './home.ts'
import type { CheckOptions, FairOptions, PaperOptions } from './options.ts'
import type { ReckonOptions } from './reckon.ts'
import type { ByHandOptions } from './reckon-by-hand.ts'
import type { AssumptionOptions } from './reckon-options.ts'
import type { StoresOptions } from './stores.ts'

/** Exit codes: 0 no error, 1 the text has errors, 2 a wrong call or something that can't be read or written. */
const wrongCall = 2

const version = () => String(JSON.parse(readFileSync(join(home, 'package.json'), 'utf8')).version)

const verbs: readonly {
  readonly verb: string
  readonly kinds: readonly PaperKind[]
  readonly summary: string
  /** Whether its papers may be had in another style than the fine one. */
  readonly hasStyles?: boolean
}[] = [
  { verb: 'draw', kinds: ['sail plan'], summary: 'draw the sail plan (SVG and PDF)', hasStyles: true },
  {
    verb: 'chart',
    kinds: ['pin charts'],
    summary: 'chart the pins: the deck, every rail, and blanks to fill (SVG and PDF)',
    hasStyles: true,
  },
  { verb: 'book', kinds: ['handbooks'], summary: 'bind a handbook for each station (PDF)' },
  { verb: 'all', kinds: ['sail plan', 'pin charts', 'handbooks'], summary: 'write all papers' },
]

function program(): Command {
  const crosstree = new Command('crosstree')
    .description('Compiles a rig, written as text, into the papers her people work from.')
    .version(version(), '-V, --version', 'print the version')
    .helpOption('-h, --help', 'print this help')
    .helpCommand(false)
    .showHelpAfterError('(crosstree --help tells how it is called)')
    .exitOverride()
  crosstree
    .command('check')
    .description('judge a rig and tell what is found')
    .argument('<file...>', 'rig files, or - for standard input')
    .addOption(formatOption())
    .option('--name <name>', 'what to call standard input', 'standard-input.rig')
    .option('--fix', 'show what can be mended surely, as a change; findings go to standard error')
    .option('--write', 'with --fix: make the change')
    .action(async (files: string[], options: CheckOptions) => {
      const { check } = await import('./check.ts')
      process.exitCode = await check(files, options, version())
    })
  crosstree
    .command('fair')
    .description('set margins and blanks of rig files fair, in place; remarks, columns and words stay')
    .argument('<file...>', 'rig files, or - for standard input, set fair on standard output')
    .option('--check', 'only tell by the exit code whether all of them are')
    .option('--name <name>', 'what to call standard input', 'standard-input.rig')
    .action(async (files: string[], options: FairOptions) => {
      const { setFair } = await import('./fair.ts')
      process.exitCode = setFair(files, options, version())
    })
  for (const { verb, kinds, summary, hasStyles } of verbs) {
    const command = crosstree.command(verb)
    if (hasStyles) command.addOption(styleOption())
    command
      .description(summary)
      .argument('<file...>', 'rig files, or - for standard input')
      .option('--into <folder>', 'where the papers go (default: out/<rig>)')
      .addOption(
        new Option('--paper <family>', 'A4 (and A3) or Letter (and Tabloid)')
          .choices(['A4', 'Letter'])
          .default('A4'),
      )
      .option('--language <name>', 'call sails and lines, and give orders, in this language of the rig')
      .option(
        '--nicknames',
        'print what lines are called aboard beside their names, at pins and in the register',
      )
      .option('--unsound', 'write papers from a rig with errors, marked so, into <folder>-unsound')
      .addOption(formatOption())
      .option('--name <name>', 'what to call standard input', 'standard-input.rig')
      .action(async (files: string[], options: PaperOptions) => {
        const { makePapers } = await import('./make-papers.ts')
        process.exitCode = await makePapers(files, new Set(kinds), options, version())
      })
  }
  findCommand(crosstree)
  reckonCommand(crosstree)
  crosstree
    .command('stores')
    .description('tell what is to be ordered: rope cut by cut from its coils, blocks, pins, thimbles, canvas')
    .argument('<file>', 'a rig file, or - for standard input')
    .addOption(
      new Option('--format <form>', 'tables on standard output, or files')
        .choices(['plain', 'json', 'csv', 'xlsx'])
        .default('plain'),
    )
    .option('--into <folder>', 'where the files go (default: out/<rig>)')
    .option('--coil <length>', 'the length of a coil: "220 m", "600 ft" (default: 220 m)')
    .option('--cloth <width>', 'the width of the canvas: "24 in", "610 mm" (default: 24 in)')
    .option('--name <name>', 'what to call standard input', 'standard-input.rig')
    .action(async (file: string, options: StoresOptions) => {
      const { stores } = await import('./stores.ts')
      process.exitCode = await stores(file, options, version())
    })
  crosstree
    .command('reeve')
    .description('write a rig in the language from the tables (CSV) in a folder')
    .argument(
      '<folder>',
      'holds spars.csv, sails.csv, rails.csv, lines.csv; hull.csv, leads.csv, deck.csv where there are such',
    )
    .option('--into <file>', 'the new rig file (default: standard output)')
    .action(async (folder: string, { into }: { into?: string }) => {
      const { reeveFolder } = await import('./reeve.ts')
      process.exitCode = reeveFolder(folder, into, version())
    })
  crosstree
    .command('explain')
    .description('print the page of a rule, or list a group of them; without one, all rules, one a line')
    .argument('[rule]', 'as in belay/two-on-a-pin, or belay')
    .action(async (rule: string | undefined) => {
      const { explainAll, explainRule } = await import('./explain.ts')
      process.stdout.write(rule === undefined ? explainAll() : explainRule(rule))
    })
  return crosstree
}

/** `find FILE WORDS`. It stands in one script with `check`, so that it starts as fast. */
function findCommand(crosstree: Command): void {
  crosstree
    .command('find')
    .description('tell where a line is, what it does and what is eased with it, by any of its names')
    .argument('<file>', 'a rig file, or - for standard input')
    .argument(
      '<words...>',
      'a name or part of one, a short form, a nickname, a word of another language, a pin',
    )
    .addOption(new Option('--format <form>', 'how it is told').choices(['plain', 'json']).default('plain'))
    .option('--name <name>', 'what to call standard input', 'standard-input.rig')
    .action(async (file: string, words: string[], options: FindOptions) => {
      const { find } = await import('./find.ts')
      process.exitCode = find(file, words, options, version())
    })
}

/** `reckon FILE`, and what may be reckoned by hand. */
function reckonCommand(crosstree: Command): void {
  crosstree
    .command('reckon')
    .description('reckon areas, balance, lengths, loads and hands; or a tackle, a rope or spars by hand')
    .argument('[file]', 'a rig file, or - for standard input')
    .addOption(
      new Option('--format <form>', 'how figures are written').choices(['plain', 'json']).default('plain'),
    )
    .option('--name <name>', 'what to call standard input', 'standard-input.rig')
    .option(
      '--set <sails>',
      'balance these sails together, "fore course and main course", or a sail plan of the text',
    )
    .option('--wind <speed>', 'the wind lines are hauled in: "8 m/s", "16 kn", "force 5"')
    .option('--off-bow <angle>', 'how far off the bow it blows, for the bracing of yards: "67.5 deg"')
    .option('--hand <force>', 'the pull of one hand: "225 N", "50 lbf"')
    .option('--loss <share>', 'what each hand beyond the fourth gives less: "10 %"')
    .option('--friction <share>', 'of each sheave: "10 %"')
    .addOption(
      new Option('--model <model>', 'what that share means').choices([
        'on the load',
        'off the lift',
        'compounding',
      ]),
    )
    .addOption(
      new Option('--rope-end <end>', 'how lines are made fast').choices([
        'spliced',
        'figure-eight',
        'knotted',
      ]),
    )
    .addOption(
      new Option('--rope-age <age>', 'how long they have served').choices(['new', 'in daily use', 'old']),
    )
    .option('--timber <name>', 'what spars are made of: "douglas fir", "steel"')
    .option('--canvas <name>', 'whose numbers canvas has: "cotton duck", "navy flax"')
    .option('--purchase <tackle>', 'by hand, a tackle: "luff", "runner and luff"')
    .option('--blocks <two>', 'by hand, a tackle by its blocks: "treble and double"')
    .addOption(
      new Option('--rove <way>', 'to').choices(['advantage', 'disadvantage']).default('disadvantage'),
    )
    .option('--load <weight>', 'what it lifts: "4 t", "12 kN"')
    .option('--leads <count>', 'lead blocks beside it', '0')
    .option('--rope <rope>', 'by hand, a rope: "24 mm manila"; with --purchase, its material')
    .option('--beam <length>', 'by hand, the proportions of spars; with --waterline')
    .option('--waterline <length>', 'for --beam')
    .option('--height <length>', 'by hand, the wind at a height, by the power law and the log law')
    .option('--sail <area>', 'by hand, the criteria of a small vessel: her sails, "700 ft2"; with --centre')
    .option('--centre <height>', 'how high the centre of her sails stands')
    .option('--displaces <weight>', 'of a catamaran, what she weighs; with --hulls')
    .option('--hulls <length>', 'of a catamaran, between the middle lines of her hulls')
    .action(async (file: string | undefined, options: ReckonOptions & ByHandOptions & AssumptionOptions) => {
      const { reckonAsked } = await import('./reckon.ts')
      process.exitCode = reckonAsked(file, options, version())
    })
}

const styleOption = () =>
  new Option(
    '--style <style>',
    'fine; black, for copiers; bold, twice as large, for walls; night, for red light, and for a screen (default folder: out/<rig>-<style>)',
  )
    .choices(['fine', 'black', 'bold', 'night', 'night-screen'])
    .default('fine')

const formatOption = () =>
  new Option('--format <form>', 'how findings are written')
    .choices(['plain', 'json', 'sarif'])
    .default('plain')

/** A reader that has gone away, as `| head` does, is no fault; a full disk behind the output is, and is told. */
function leaveOutput(error: NodeJS.ErrnoException): void {
  if (error.code === 'EPIPE') process.exit(process.exitCode ?? 0)
  process.stderr.write(`crosstree: the output can't be written: ${inWords(error)}.\n`)
  process.exit(wrongCall)
}

process.stdout.on('error', leaveOutput)
// Where complaints can't be told, nothing more can.
process.stderr.on('error', ({ code }: NodeJS.ErrnoException) =>
  process.exit(code === 'EPIPE' ? (process.exitCode ?? 0) : wrongCall),
)

async function run(): Promise<void> {
  try {
    const crosstree = program()
    if (process.argv.length <= 2) {
      crosstree.outputHelp({ error: true })
      process.exitCode = wrongCall
    } else await crosstree.parseAsync()
  } catch (error) {
    if (error instanceof CommanderError) process.exitCode = error.exitCode === 0 ? 0 : wrongCall
    else if (isComplaint(error)) {
      process.stderr.write(`crosstree: ${error.message}\n`)
      process.exitCode = wrongCall
    } else throw error
  }
}

/** Once all is written nothing is waited for: V8 would only begin to collect garbage. */
const leave = () => whenWritten(process.stdout, () => whenWritten(process.stderr, () => process.exit()))

/** Goes on when all that a stream was given is written; where that fails, `leaveOutput` ends the run. */
function whenWritten(stream: NodeJS.WriteStream, then: () => void): void {
  stream.write('', lost => {
    if (!lost) then()
  })
}

void run().then(leave)
