import { availableParallelism } from 'node:os'
import { isMainThread, parentPort, Worker, workerData } from 'node:worker_threads'
import type { Paper } from '../sheets/papers.ts'
import { openPress } from './press-paper.ts'
import type { Finished } from './publish.ts'

/** A second press, in a thread of its own, for a machine with a second processor. */
export interface PressThread {
  /** Presses this paper after those offered before it, unless whoever offers it takes it back. */
  readonly offer: (paper: Paper) => Offer
  readonly close: () => void
}

/** A paper that lies before both presses. */
export interface Offer {
  /** Takes it back: false where the thread has begun it, or is done. */
  readonly takeBack: () => boolean
  /** Its files, if the thread presses it. */
  readonly pressed: Promise<readonly Finished[]>
}

/** Starts the thread from this very file; none where there is one processor, or where Node would have to read TypeScript. */
export function pressThread(): PressThread | undefined {
  if (availableParallelism() < 2 || import.meta.url.endsWith('.ts')) return undefined
  const worker = new Worker(new URL(import.meta.url), { workerData: task })
  const waiting = new Map<number, Waiting>()
  let offered = 0
  worker.on('message', ({ id, files }: Pressed) => waiting.get(id)?.done(files))
  worker.on('error', error => {
    for (const { fail } of waiting.values()) fail(error)
  })
  return {
    offer: paper => {
      const id = offered++
      const taken = new Int32Array(new SharedArrayBuffer(4))
      const pressed = new Promise<readonly Finished[]>((done, fail) => waiting.set(id, { done, fail }))
      // Whoever waits for it learns of a failure; until then it must not count as one that nobody heeds.
      pressed.catch(() => {})
      worker.postMessage({ id, paper, taken } satisfies Message)
      return { takeBack: () => isMine(taken), pressed }
    },
    close: () => void worker.terminate(),
  }
}

interface Message {
  readonly id: number
  readonly paper: Paper
  /** One number that both threads see: nought until one of them takes the paper. */
  readonly taken: Int32Array
}

interface Pressed {
  readonly id: number
  readonly files: readonly Finished[]
}

interface Waiting {
  readonly done: (files: readonly Finished[]) => void
  readonly fail: (error: Error) => void
}

const isMine = (taken: Int32Array): boolean => Atomics.compareExchange(taken, 0, 0, 1) === 0

const task = 'press papers'

if (!isMainThread && workerData === task) serve()

function serve(): void {
  const ready = openPress().then(async ({ press }) => {
    await press(blank)
    return press
  })
  let last: Promise<void> = Promise.resolve()
  parentPort?.on('message', ({ id, paper, taken }: Message) => {
    last = last.then(async () => {
      const press = await ready
      if (isMine(taken)) parentPort?.postMessage({ id, files: await press(paper) } satisfies Pressed)
    })
  })
}

// Pressed while the first paper is still laid out, so that all it takes is loaded by then.
const sheet = { id: '', title: '', description: '', width: 1, height: 1, ground: undefined, marks: [] }
const blank: Paper = {
  document: {
    ...sheet,
    language: 'en',
    subject: '',
    pages: [sheet],
    pageLabels: undefined,
    outline: [],
    date: undefined,
  },
  sheet,
}
