/** Gives each address an id that XML allows and that no other element of the drawing has. */
export type Identify = (address: string) => string

/** A fresh set of ids, for one drawing. */
export function identify(): Identify {
  const taken = new Set<string>()
  return address => {
    const base = elementId(address)
    let id = base
    for (let again = 2; taken.has(id); again++) id = `${base}..${again}`
    taken.add(id)
    return id
  }
}

/** The id an address gets where it is drawn first: itself, save for characters that no id may hold. */
export function elementId(address: string): string {
  const id = address.replace(/[^\p{L}\p{N}._-]/gu, '_')
  return /^[\p{L}_]/u.test(id) ? id : `_${id}`
}
