import { availableParallelism } from 'node:os'
import { isMainThread, parentPort, Worker, workerData } from 'node:worker_threads'
import type { Paper } from '../sheets/papers.ts'
import { openPress, type PressPaper } from './press-paper.ts'
import type { Finished } from './publish.ts'

/** A second press, in a thread of its own, for a machine with a second processor. */
export interface PressThread {
  /** False while it has enough in hand to be busy until it is asked again. */
  readonly hasRoom: () => boolean
  readonly press: PressPaper
  readonly close: () => void
}

/** Starts the thread from this very file; none where there is one processor, or where Node would have to read TypeScript. */
export function pressThread(): PressThread | undefined {
  if (availableParallelism() < 2 || import.meta.url.endsWith('.ts')) return undefined
  const worker = new Worker(new URL(import.meta.url), { workerData: task })
  const waiting: {
    readonly done: (files: readonly Finished[]) => void
    readonly fail: (error: Error) => void
  }[] = []
  // Papers come back in the order they were sent.
  worker.on('message', (files: readonly Finished[]) => waiting.shift()?.done(files))
  worker.on('error', error => {
    for (const { fail } of waiting.splice(0)) fail(error)
  })
  return {
    hasRoom: () => waiting.length < 2,
    press: paper =>
      new Promise((done, fail) => {
        waiting.push({ done, fail })
        worker.postMessage(paper)
      }),
    close: () => void worker.terminate(),
  }
}

const task = 'press papers'

if (!isMainThread && workerData === task) serve()

function serve(): void {
  const opened = openPress()
  let last: Promise<void> = Promise.resolve()
  parentPort?.on('message', (paper: Paper) => {
    last = last.then(async () => {
      const { press } = await opened
      parentPort?.postMessage(await press(paper))
    })
  })
}
