import type { Mark, PathStep, Pen, Point, Sheet } from './sheet.ts'

/** A sheet so many times as long and broad, with all that stands on it. */
export function enlarged(sheet: Sheet, times: number): Sheet {
  if (times === 1) return sheet
  const point = ({ x, y }: Point): Point => ({ x: x * times, y: y * times })
  const steps = (path: readonly PathStep[]) =>
    path.map(([kind, ...numbers]) => [kind, ...numbers.map(n => n * times)] as unknown as PathStep)
  const pen = (one: Pen): Pen => ({
    ...one,
    width: one.width * times,
    ...(one.dash && { dash: one.dash.map(n => n * times) }),
  })
  const mark = (one: Mark): Mark => {
    switch (one.kind) {
      case 'group':
        return {
          ...one,
          ...(one.offset && { offset: point(one.offset) }),
          ...(one.clip && { clip: steps(one.clip) }),
          marks: one.marks.map(mark),
        }
      case 'text':
        return {
          ...one,
          at: point(one.at),
          type: { ...one.type, size: one.type.size * times },
          width: one.width * times,
          ...(one.halo && { halo: { ...one.halo, width: one.halo.width * times } }),
        }
      case 'line':
        return { ...one, points: one.points.map(point), ...(one.pen && { pen: pen(one.pen) }) }
      case 'path':
        return { ...one, steps: steps(one.steps), ...(one.pen && { pen: pen(one.pen) }) }
      case 'circle':
        return {
          ...one,
          at: point(one.at),
          radius: one.radius * times,
          ...(one.pen && { pen: pen(one.pen) }),
        }
    }
  }
  const { width, height, marks } = sheet
  return { ...sheet, width: width * times, height: height * times, marks: marks.map(mark) }
}
