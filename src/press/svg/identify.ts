/** Gives each address an id that XML allows and that no other element of the drawing has. */
export type Identify = (address: string) => string

/** A fresh set of ids, for one drawing. */
export function identify(): Identify {
  const taken = new Set<string>()
  const given = new Map<string, number>()
  return address => {
    const base = elementId(address)
    let count = (given.get(base) ?? 0) + 1
    let id = count === 1 ? base : `${base}..${count}`
    while (taken.has(id)) id = `${base}..${++count}`
    given.set(base, count)
    taken.add(id)
    return id
  }
}

/** The id an address gets where it is drawn first: itself, save for characters that no id may hold. */
export function elementId(address: string): string {
  const id = address.normalize('NFC').replace(/[^\p{L}\p{N}._-]|[\u{10000}-\u{10ffff}]/gu, '_')
  return /^[\p{L}_]/u.test(id) ? id : `_${id}`
}
