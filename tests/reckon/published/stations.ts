import { heldByTurns } from '../../../src/reckon/tackle/index.ts'
import { compiledText, exampleText } from '../../support/compiled.ts'
import type { PublishedRow, Topic } from './row.ts'

const dana = "R. H. Dana Jr, The Seaman's Friend, 5th ed., Boston 1847"
const post = 'belt friction of Euler and Eytelwein: a problem in print, its answer worked here'
const barque = exampleText('barque-harrow-tansy')

/** What is said of the barque when her text is altered: whether the check speaks. */
function told(rule: string, from: string, to: string): string {
  if (!barque.includes(from)) throw new Error(`the barque doesn't say "${from}"`)
  const { findings } = compiledText(barque.replace(from, to))
  return findings.some(one => one.rule === rule) ? 'told' : 'silent'
}
const policy = (fact: string, published: string, computed: string): PublishedRow => ({
  fact,
  source: `${dana}, ch. III`,
  status: 'read',
  kind: 'policy',
  published,
  computed,
  unit: '',
  within: { amount: 0 },
})
const mainHalyards = '21  port topgallant halyard, starboard upper topsail halyard'

export const stations: Topic = {
  title: 'Belaying, stations and crew',
  rows: [
    {
      fact: 'A rope a turn and a half round a post, friction 0.35: ratio of the pulls',
      source: post,
      status: 'read',
      kind: 'computed',
      published: 27.08,
      computed: heldByTurns(1.5),
      unit: '',
      within: { share: 0.005 },
    },
    {
      fact: 'The same, 50 lb held: load',
      source: post,
      status: 'read',
      kind: 'computed',
      published: 1354,
      computed: 50 * heldByTurns(1.5),
      unit: 'lb',
      within: { share: 0.005 },
    },
    policy(
      'Topsail halyards of fore and main to opposite sides: both led to port',
      'told',
      told(
        'mast/halyards-one-side',
        mainHalyards,
        '21  port upper topsail halyard, starboard topgallant halyard',
      ),
    ),
    policy(
      'Topsail halyards of fore and main to opposite sides: as the barque has them',
      'silent',
      told('mast/halyards-one-side', mainHalyards, mainHalyards),
    ),
    policy(
      'Topgallant halyard across from its topsail halyard: as the barque has them',
      'silent',
      told('mast/topsail-and-topgallant-one-side', mainHalyards, mainHalyards),
    ),
  ],
  passedOver: [
    {
      fact: 'Four turns and more in all on a pin; one full turn and three crossings',
      source: 'encyclopaedia texts on belaying pins',
      because: 'advice to the hand at the pin: a text of a rig says nothing of turns',
    },
    {
      fact: 'All lee main braces may share one pin when tacking',
      source: `${dana}, ch. XI`,
      because: 'no figure: a text may share a pin on purpose, and belay/two-on-a-pin is then silent',
    },
    {
      fact: 'Pins 200 to 300 mm apart, one and a half to two ropes thick',
      source: 'none found in print',
      because:
        'common practice: belay/pins-too-close tells of pins under 160 mm, and says that it has no source',
    },
    {
      fact: 'Tacking and wearing: orders, and at least eleven hands to fill every post',
      source: `${dana}, ch. XI`,
      because: 'orders of the whole ship are not made yet: the program sets and douses single sails',
    },
    {
      fact: 'Watches of equal strength, posts by skill, all hands or the watch; a third of the crew to a watch',
      source: `${dana}, part II; common practice for the last`,
      because: 'the text says the hands of each station; nobody is named or mustered yet',
    },
    {
      fact: 'Hands for each sail in proportion to its canvas',
      source: 'a naval manual, p. 347 (work not identified)',
      because: 'hands of a line come from its load; no bill of stations is made yet',
    },
    {
      fact: 'Schooners of 1906: crews of 1 to 30, most 5 to 15',
      source: 'S. Woods, Crew Requirements by Tonnage and Rig, 2021',
      because: 'a range so wide that it judges nothing',
    },
  ],
}
