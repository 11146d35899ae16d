export { linkSentence, reasonSentence, whySentences } from "./access/links";
export { statementSentence } from "./access/statements";
export { effectSentence, wayOutSentence } from "./access/ways-out";
export { begunBefore } from "./begun-before";
export { buildCautions, deferral, pieceCautions, stepCautions } from "./cautions";
export { asOneSentence, inTwoSentence, pastedSentences, stepsWords } from "./changed";
export { clockWords, dateWords } from "./dates";
export { findingSentence, sayings } from "./finding";
export { staysSentence } from "./kits/stays";
export { unknownSentence } from "./kits/unknown";
export { lengthsTogether } from "./lengths";
export { goesByWords, lostSentences } from "./lost";
export { aimNames, aimProgress, aimSentences } from "./plan/aims";
export { closedWords, closingSentences, holdPointSentences, type LastChances, pieceCloses, undatedClosings } from "./plan/closings";
export { comparisonSentences } from "./plan/comparison";
export { askSentence, type DayWords, dayWords, leftSentence } from "./plan/day-sheet";
export { workOn } from "./plan/days";
export { gathered } from "./plan/findings";
export {
  assumptionSentence,
  chainReason,
  chainRuns,
  chainSentences,
  deliverySentence,
  heldClause,
  holderSentence,
  peopleWords,
  runSentence,
} from "./plan/holders";
export { type OneMoreLine, type OneMoreWords, oneMoreProgress, oneMoreWords } from "./plan/one-more";
export {
  boundSentence,
  earlierSentence,
  foundSentence,
  givesUpSentence,
  lookingSentence,
  seekingSentence,
  verdictSentence,
} from "./plan/search";
export { slackSentence } from "./plan/slack";
export { barSentences, barSetSentence, barSizeWords } from "./pour/bars";
export { type BuyWords, buyWords } from "./pour/buy";
export { bareSentence, cureSentence, removalNames } from "./pour/cured";
export { daySentences, volumeWords } from "./pour/day";
export { fixSentence } from "./pour/fixes";
export {
  checkWords,
  documentWords,
  firstSentence,
  formCaution,
  fullHeadReasons,
  liftSentences,
  memberName,
  of100,
  overSentence,
  partWords,
  pressureSentences,
  pressureWords,
  riseWords,
} from "./pour/members";
export { plyWords } from "./pour/ply";
export { alsoSentence, careSentences, groundWords, removalSentence, removalState } from "./pour/removals";
export { type BodyChange, bodiesSentence, carryingCaution, stateWords, structureSentence } from "./structure";
export { counted, listed, quoted, sentence, spelled } from "./text";
export { usualSentence } from "./usual";
export { voice, workWords } from "./voice";
