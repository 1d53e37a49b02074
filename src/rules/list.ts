import { leadOutOfRange } from './balance/lead-out-of-range.ts'
import { leadWhileSetting } from './balance/lead-while-setting.ts'
import { halyardNotAtEnd } from './belay/halyard-not-at-end.ts'
import { neverShared } from './belay/never-shared.ts'
import { noClearDeck } from './belay/no-clear-deck.ts'
import { noPlace } from './belay/no-place.ts'
import { pinsTooClose } from './belay/pins-too-close.ts'
import { quickReleaseHemmedIn } from './belay/quick-release-hemmed-in.ts'
import { twoOnAPin } from './belay/two-on-a-pin.ts'
import { meetsNextMast } from './boom/meets-next-mast.ts'
import { noToppingLift } from './boom/no-topping-lift.ts'
import { chafesStanding } from './lead/chafes-standing.ts'
import { linesCross } from './lead/lines-cross.ts'
import { noWalkAway } from './lead/no-walk-away.ts'
import { orderSwaps } from './lead/order-swaps.ts'
import { overPassage } from './lead/over-passage.ts'
import { throughHouse } from './lead/through-house.ts'
import { toBeGiven } from './lead/to-be-given.ts'
import { tooManyTurns } from './lead/too-many-turns.ts'
import { turnsSharply } from './lead/turns-sharply.ts'
import { actsOnNothing } from './line/acts-on-nothing.ts'
import { braceWithoutPurchase } from './line/brace-without-purchase.ts'
import { condemned } from './line/condemned.ts'
import { counterpartOmitted } from './line/counterpart-omitted.ts'
import { counterpartOneWay } from './line/counterpart-one-way.ts'
import { cutLong } from './line/cut-long.ts'
import { cutShort } from './line/cut-short.ts'
import { handsShort } from './line/hands-short.ts'
import { materialUnknown } from './line/material-unknown.ts'
import { nothingAnswers } from './line/nothing-answers.ts'
import { ropeTooThin } from './line/rope-too-thin.ts'
import { ropeTooWeak } from './line/rope-too-weak.ts'
import { surveyOverdue } from './line/survey-overdue.ts'
import { halyardsOneSide } from './mast/halyards-one-side.ts'
import { orderDiffers } from './mast/order-differs.ts'
import { partWithoutHeight } from './mast/part-without-height.ts'
import { topsailAndTopgallantOneSide } from './mast/topsail-and-topgallant-one-side.ts'
import { upperBeforeLower } from './mast/upper-before-lower.ts'
import { ofNothing } from './measure/of-nothing.ts'
import { printedAlike } from './name/printed-alike.ts'
import { aloftWhileWorked } from './order/aloft-while-worked.ts'
import { counterpartUnmanned } from './order/counterpart-unmanned.ts'
import { hauledAgainst } from './order/hauled-against.ts'
import { leeBackstayKept } from './order/lee-backstay-kept.ts'
import { letGoUnderLoad } from './order/let-go-under-load.ts'
import { moreHandsThanAboard } from './order/more-hands-than-aboard.ts'
import { partyTooSmall } from './order/party-too-small.ts'
import { notMirrored } from './pair/not-mirrored.ts'
import { oneMissing } from './pair/one-missing.ts'
import { oneSide } from './pair/one-side.ts'
import { wrongSide } from './pair/wrong-side.ts'
import { clewApart } from './reach/clew-apart.ts'
import { outOfHail } from './reach/out-of-hail.ts'
import { outOfSight } from './reach/out-of-sight.ts'
import type { Rule } from './rule.ts'
import { beyondItsStay } from './sail/beyond-its-stay.ts'
import { canvasUnknown } from './sail/canvas-unknown.ts'
import { cornerMissing } from './sail/corner-missing.ts'
import { cornerOffItsSpar } from './sail/corner-off-its-spar.ts'
import { edgesCrossed } from './sail/edges-crossed.ts'
import { footAboveHead } from './sail/foot-above-head.ts'
import { footWiderThanYard } from './sail/foot-wider-than-yard.ts'
import { gearOutOfOrder } from './sail/gear-out-of-order.ts'
import { noBrace } from './sail/no-brace.ts'
import { noBuntline } from './sail/no-buntline.ts'
import { noSheet } from './sail/no-sheet.ts'
import { noTack } from './sail/no-tack.ts'
import { nothingGetsItIn } from './sail/nothing-gets-it-in.ts'
import { nothingSetsIt } from './sail/nothing-sets-it.ts'
import { sheetOneSide } from './sail/sheet-one-side.ts'
import { sheetedAndShackled } from './sail/sheeted-and-shackled.ts'
import { throatAndPeakOneSide } from './sail/throat-and-peak-one-side.ts'
import { twoInOnePlace } from './sail/two-in-one-place.ts'
import { sparMaterialUnknown } from './spar/material-unknown.ts'
import { bracedTooSharp } from './yard/braced-too-sharp.ts'
import { fixedHasHalyard } from './yard/fixed-has-halyard.ts'
import { hoistAboveTruck } from './yard/hoist-above-truck.ts'
import { longerThanBelow } from './yard/longer-than-below.ts'
import { loweredTooLow } from './yard/lowered-too-low.ts'
import { noHalyard } from './yard/no-halyard.ts'
import { nothingGetsItDown } from './yard/nothing-gets-it-down.ts'
import { shorterThanHead } from './yard/shorter-than-head.ts'

/**
 * Every rule, in the order in which they judge. A cause stands before what follows from it: a line that acts on
 * nothing before the sail that it should have set.
 */
export const rules: readonly Rule[] = [
  fixedHasHalyard,
  noPlace,
  actsOnNothing,
  nothingSetsIt,
  nothingAnswers,
  counterpartOneWay,
  counterpartOmitted,
  oneMissing,
  oneSide,
  wrongSide,
  notMirrored,
  twoOnAPin,
  neverShared,
  pinsTooClose,
  halyardNotAtEnd,
  noClearDeck,
  quickReleaseHemmedIn,
  noHalyard,
  nothingGetsItDown,
  nothingGetsItIn,
  noSheet,
  sheetOneSide,
  noTack,
  noBrace,
  braceWithoutPurchase,
  noBuntline,
  sheetedAndShackled,
  throatAndPeakOneSide,
  noToppingLift,
  meetsNextMast,
  clewApart,
  outOfHail,
  outOfSight,
  shorterThanHead,
  footWiderThanYard,
  footAboveHead,
  edgesCrossed,
  beyondItsStay,
  cornerOffItsSpar,
  cornerMissing,
  partWithoutHeight,
  twoInOnePlace,
  hoistAboveTruck,
  loweredTooLow,
  longerThanBelow,
  bracedTooSharp,
  orderDiffers,
  upperBeforeLower,
  gearOutOfOrder,
  halyardsOneSide,
  topsailAndTopgallantOneSide,
  printedAlike,
  leadOutOfRange,
  leadWhileSetting,
  ropeTooThin,
  materialUnknown,
  ofNothing,
  sparMaterialUnknown,
  canvasUnknown,
  ropeTooWeak,
  handsShort,
  hauledAgainst,
  letGoUnderLoad,
  aloftWhileWorked,
  leeBackstayKept,
  moreHandsThanAboard,
  partyTooSmall,
  counterpartUnmanned,
  throughHouse,
  overPassage,
  linesCross,
  chafesStanding,
  orderSwaps,
  turnsSharply,
  tooManyTurns,
  noWalkAway,
  toBeGiven,
  cutShort,
  cutLong,
  condemned,
  surveyOverdue,
]
