/** Things sorted by the mast they belong to, each in the order it came; those of no mast are left out. */
export function byMast<T extends { readonly mast: string | undefined }>(
  things: readonly T[],
): ReadonlyMap<string, readonly T[]> {
  const masts = new Map<string, T[]>()
  for (const thing of things) {
    if (thing.mast === undefined) continue
    const list = masts.get(thing.mast)
    if (list) list.push(thing)
    else masts.set(thing.mast, [thing])
  }
  return masts
}
