export { linkSentence, reasonSentence, whySentences } from "./access/links";
export { statementSentence } from "./access/statements";
export { effectSentence, wayOutSentence } from "./access/ways-out";
export { buildCautions, deferral, pieceCautions, stepCautions } from "./cautions";
export { clockWords, dateWords } from "./dates";
export { findingSentence, sayings } from "./finding";
export { closedWords, closingSentences, holdPointSentences, type LastChances, pieceCloses, undatedClosings } from "./plan/closings";
export { comparisonSentences } from "./plan/comparison";
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
export { slackSentence } from "./plan/slack";
export { counted, listed, quoted, sentence, spelled } from "./text";
export { voice, workWords } from "./voice";
