import { type Clause, nameKey, type Page, type Statement } from '../../syntax/index.ts'
import type { Day } from '../day.ts'
import { type Condition, conditions, type Survey } from '../survey.ts'
import { clause, clausesOf } from './clauses.ts'
import type { LineNames } from './line-names.ts'
import { linesCalled } from './lines-called.ts'
import { finding, listed, type Say, unknownName } from './say.ts'

/** What the surveys found, by the pair key of a line; of several, the one that the text has last. */
export function buildSurveys(
  pages: readonly Page[],
  names: LineNames,
  say: Say,
): ReadonlyMap<string, Survey> {
  const surveys = new Map<string, Survey>()
  for (const page of pages) {
    if (page.kind !== 'survey') continue
    const day = clause(page, 'date')
    if (!day) {
      say(
        finding('line/survey-undated', page.span, "It isn't said on which day this survey was made.", {
          aboard: 'What was sound then may not be sound now.',
          remedy: 'Say the day, as in "survey 14 October 2026".',
        }),
      )
      continue
    }
    for (const entry of page.block) {
      for (const pairKey of linesCalled(entry, names, say)) {
        const condition = conditionOf(entry, say)
        if (condition) surveys.set(pairKey, surveyOf(entry, page, dayOf(day), condition))
      }
    }
  }
  return surveys
}

function surveyOf(entry: Statement, page: Page, day: Day, condition: Condition): Survey {
  const due = clausesOf(entry, 'due').at(-1)
  return {
    day,
    by: clause(page, 'by')?.words.text,
    condition,
    note: clause(entry, 'label')?.label.text,
    due: due && dayOf(due),
  }
}

function conditionOf(entry: Statement, say: Say): Condition | undefined {
  const said = clause(entry, 'class')?.name
  const condition = conditions.find(one => one === nameKey(said?.words ?? ''))
  if (said && !condition) say(unknownName('condition', said, conditions))
  if (!said && entry.name) {
    say(
      finding('line/survey-silent', entry.name.span, `It isn't said how the ${entry.name.words} was found.`, {
        remedy: `Say it after a comma: ${listed(conditions)}.`,
      }),
    )
  }
  return condition
}

/** The day that a clause says, and nothing else of it. */
export const dayOf = ({
  year,
  month,
  day,
}: Extract<Clause, { kind: 'date' | 'due' | 'inspected' }>): Day => ({
  year,
  month,
  day,
})
