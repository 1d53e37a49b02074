/**
 * What a mate would see wrong on a chart, in a gear or in an order, one row for each, with the checks that see it. What
 * no check sees says why: it can't be told from a text, or it waits for figures.
 */
export interface Row {
  readonly sees: string
  /** Slugs of the checks, the chief one first. */
  readonly by: readonly string[]
  /** Where another row's check sees this one too: in what it is merged. */
  readonly merged?: string
  /** Why it can't be told from a rig's text. */
  readonly undecidable?: string
  /** What it waits for, in whole or in part. */
  readonly waits?: string
}

export interface Chapter {
  readonly title: string
  readonly rows: readonly Row[]
}

export const chapters: readonly Chapter[] = [
  {
    title: 'Places',
    rows: [
      { sees: 'two loaded lines on one pin', by: ['belay/two-on-a-pin', 'belay/never-shared'] },
      { sees: 'a line made fast nowhere', by: ['belay/no-place'] },
      { sees: 'a line that acts on nothing', by: ['line/acts-on-nothing'] },
      {
        sees: 'a rail or a pin that there is not',
        by: ['belay/no-such-rail', 'belay/no-such-pin', 'name/unknown'],
      },
      {
        sees: 'more lines on a rail than it has pins',
        by: ['belay/two-on-a-pin', 'belay/no-such-pin'],
        merged:
          'every line is given its pin, so that one too many is either the second there or beyond the end',
      },
      { sees: 'pins so near that coils foul', by: ['belay/pins-too-close'] },
      { sees: 'tack and sheet of a course on one kevel', by: ['belay/never-shared', 'belay/two-on-a-pin'] },
      {
        sees: 'a halyard in the middle of a rail, or without clear deck beside it',
        by: ['belay/halyard-not-at-end', 'belay/no-clear-deck'],
      },
      {
        sees: 'what must be cast off at a word, among other coils',
        by: ['belay/quick-release-hemmed-in', 'belay/never-shared'],
      },
      {
        sees: 'a heavy line on a thin pin',
        by: [],
        undecidable: 'a text gives the count and the place of pins, and not their thickness',
      },
      {
        sees: 'a loaded line on a rack too light for it',
        by: [],
        undecidable: 'a text does not say what a rack may bear',
      },
    ],
  },
  {
    title: 'Pairs',
    rows: [
      { sees: 'one side of a pair missing', by: ['pair/one-missing'] },
      { sees: 'both of a pair to one side', by: ['pair/one-side'] },
      { sees: 'a pair on pins that are not opposite', by: ['pair/not-mirrored'] },
      { sees: 'a line named port made fast to starboard', by: ['pair/wrong-side'] },
      {
        sees: 'the two braces of a yard with leads of unlike length',
        by: ['pair/not-mirrored'],
        merged:
          'port and starboard blocks mirror each other in a text, so that only the pins can make leads unlike',
      },
      {
        sees: 'running backstays that are no pair, or both set up while the boom goes out',
        by: ['pair/one-missing', 'order/lee-backstay-kept'],
      },
    ],
  },
  {
    title: 'Setting and getting in',
    rows: [
      { sees: 'a hoisting yard or sail without halyard', by: ['yard/no-halyard', 'sail/nothing-sets-it'] },
      { sees: 'a hoisting yard that nothing brings down', by: ['yard/nothing-gets-it-down'] },
      { sees: 'a headsail or staysail without downhaul or inhaul', by: ['sail/nothing-gets-it-in'] },
      { sees: 'a headsail or staysail sheeted on one side', by: ['sail/sheet-one-side'] },
      { sees: 'a square sail without clewlines', by: ['sail/nothing-gets-it-in'] },
      { sees: 'a square sail without buntlines', by: ['sail/no-buntline'] },
      { sees: 'a square yard without braces', by: ['sail/no-brace', 'pair/one-missing'] },
      { sees: 'clews neither sheeted nor shackled', by: ['sail/no-sheet'] },
      { sees: 'a course without tacks', by: ['sail/no-tack'] },
      { sees: 'clews sheeted and shackled both', by: ['sail/sheeted-and-shackled'] },
      { sees: 'a halyard on a fixed yard', by: ['yard/fixed-has-halyard'] },
      {
        sees: 'a gaff sail without throat and peak halyards, or a standing gaff without outhaul and brails',
        by: ['sail/nothing-sets-it', 'sail/nothing-gets-it-in'],
      },
      { sees: 'a boom with nothing to top it', by: ['boom/no-topping-lift'] },
      { sees: 'a gaff topsail without clewline', by: ['sail/nothing-gets-it-in'] },
      { sees: 'two sails in one place', by: ['sail/two-in-one-place'] },
    ],
  },
  {
    title: 'Worked together',
    rows: [
      {
        sees: 'sheet and clewline of one clew far apart, or out of sight of each other',
        by: ['reach/clew-apart', 'reach/out-of-sight', 'reach/out-of-hail'],
      },
      { sees: 'halyard and downhaul out of hail of each other', by: ['reach/out-of-hail'] },
      {
        sees: 'a line that fights another and is not said to',
        by: ['line/nothing-answers', 'line/counterpart-one-way', 'line/counterpart-omitted'],
      },
      { sees: 'a line whose counterpart stands where nobody is', by: ['order/counterpart-unmanned'] },
      {
        sees: 'a phase with more hands than she has, or one hand on two lines',
        by: ['order/more-hands-than-aboard', 'order/party-too-small'],
      },
      { sees: 'a line hauled before its counterpart is eased', by: ['order/hauled-against'] },
      { sees: 'the only thing that holds a load let go', by: ['order/let-go-under-load'] },
      { sees: 'hands on a yard that is hoisted, braced or sheeted', by: ['order/aloft-while-worked'] },
    ],
  },
  {
    title: 'Mast by mast',
    rows: [
      { sees: 'another order of gear on fore and main', by: ['mast/order-differs'] },
      { sees: "one sail's lines in another order than its neighbour's", by: ['sail/gear-out-of-order'] },
      { sees: "an upper sail's gear forward of a lower one's", by: ['mast/upper-before-lower'] },
      { sees: 'halyards of like yards on neighbouring masts to one side', by: ['mast/halyards-one-side'] },
      {
        sees: 'topsail and topgallant halyard of one mast to one side',
        by: ['mast/topsail-and-topgallant-one-side'],
      },
      { sees: 'throat and peak halyard to one side', by: ['sail/throat-and-peak-one-side'] },
      { sees: 'one name for two things, or two for one', by: ['name/twice', 'name/printed-alike'] },
    ],
  },
  {
    title: 'Leads',
    rows: [
      { sees: 'no room to walk away with a halyard', by: ['lead/no-walk-away'] },
      { sees: 'a lead across a companion, a ladder or the wheel', by: ['lead/over-passage'] },
      { sees: 'a lead through a house, a boat or a mast', by: ['lead/through-house'] },
      { sees: 'two moving leads that cross', by: ['lead/lines-cross', 'lead/order-swaps'] },
      { sees: 'a lead that chafes a shroud or a stay', by: ['lead/chafes-standing'] },
      { sees: 'a lead round many blocks', by: ['lead/too-many-turns', 'lead/turns-sharply'] },
    ],
  },
  {
    title: 'Rope and hands',
    rows: [
      { sees: 'a long lower yard braced without purchase', by: ['line/brace-without-purchase'] },
      {
        sees: 'rope too weak for its load',
        by: ['line/rope-too-weak', 'line/material-unknown', 'line/condemned', 'line/survey-overdue'],
      },
      { sees: 'thin rope for a party', by: ['line/rope-too-thin'] },
      {
        sees: 'rope too thick for its block',
        by: [],
        undecidable: "a text does not give the size of a block's sheave",
      },
      { sees: 'a load beyond the hands of its party', by: ['line/hands-short'] },
      { sees: 'a line cut too short', by: ['line/cut-short'] },
      { sees: 'a line cut far too long', by: ['line/cut-long'] },
    ],
  },
  {
    title: 'Shapes',
    rows: [
      {
        sees: 'a yard shorter than the head of its sail, or than the foot above it',
        by: ['yard/shorter-than-head', 'sail/foot-wider-than-yard'],
      },
      { sees: 'a yard longer than the one below', by: ['yard/longer-than-below'] },
      {
        sees: 'a yard or a head above the truck, a yard lowered below its cap',
        by: ['yard/hoist-above-truck', 'yard/lowered-too-low'],
      },
      { sees: 'a yard lowered on the one below', by: ['yard/lowered-too-low'] },
      {
        sees: 'a foot above its head, edges that cross, a corner off its spar',
        by: ['sail/foot-above-head', 'sail/edges-crossed', 'sail/corner-off-its-spar'],
      },
      { sees: "a tack or a head beyond its stay's ends", by: ['sail/beyond-its-stay'] },
      { sees: 'a boom or a gaff too long to swing', by: ['boom/meets-next-mast'] },
      { sees: 'a yard that can’t be braced so sharp', by: ['yard/braced-too-sharp'] },
      { sees: 'a centre of effort too far aft or forward', by: ['balance/lead-out-of-range'] },
      {
        sees: 'balance lost on the way while sail is set in the order given',
        by: ['balance/lead-while-setting'],
      },
    ],
  },
]
