/** A function that makes the value of each key once and then remembers it. */
export function once<Key, Value>(make: (key: Key) => Value): (key: Key) => Value {
  const made = new Map<Key, Value>()
  return key => {
    const known = made.get(key)
    if (known !== undefined || made.has(key)) return known as Value
    const value = make(key)
    made.set(key, value)
    return value
  }
}
