/** A function that makes the value of each key once and then remembers it. */
export function once<Key, Value>(make: (key: Key) => Value): (key: Key) => Value {
  const made = new Map<Key, Value>()
  return key => {
    if (!made.has(key)) made.set(key, make(key))
    return made.get(key) as Value
  }
}
