import { workedFrom } from '../../measure/index.ts'
import type { Criterion, Figures } from '../../reckon/index.ts'
import { type Plain, type ReckoningRecord, record } from './plain.ts'

/** How the yards of each mast stand on the course assumed. */
export const bracingRecord = (figures: Figures): readonly ReckoningRecord[] =>
  figures.bracing().map(({ mast, yards }) =>
    record(
      { mast },
      {
        yards: workedFrom([yards], all =>
          all.map(({ yard, height, apparent, limit, byRule, byGradient, byHalfPoints }) =>
            record(
              {
                name: yard,
                up_m: height,
                wind_felt_m_s: apparent.speed,
                wind_felt_rad: apparent.angle,
                by_rule_rad: byRule,
                by_gradient_rad: byGradient,
              },
              {
                sharpest_rad: workedFrom([limit], ({ angle }) => angle),
                by_half_points_rad: byHalfPoints,
                stopped_by: workedFrom([limit], ({ stoppedBy }) => stoppedBy),
              },
            ),
          ),
        ),
      },
    ),
  )

/** The printed criteria, and what is asked of her. */
export function stabilityRecord(figures: Figures): ReckoningRecord {
  const { criteria, leastMetacentricHeight, heel, proof } = figures.stability()
  const numeral = (axis: 'x' | 'y' | 'z') => {
    const figure = criteria.known ? criteria.value[axis] : criteria
    return workedFrom([figure], criterionRecord)
  }
  return record(
    {},
    {
      x: numeral('x'),
      y: numeral('y'),
      z: numeral('z'),
      range: workedFrom([criteria], ({ range }) => criterionRecord(range)),
      least_metacentric_height_m: leastMetacentricHeight,
      heel_rad: heel,
      ...(proof === undefined ? {} : { proof_moment_N_m: proof }),
    },
  )
}

const criterionRecord = ({ has, asked, isMet, caution }: Criterion): Plain => ({
  has,
  asked,
  met: isMet,
  ...(caution === undefined ? {} : { caution }),
})
