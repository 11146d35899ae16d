export { beginProof, type Proof, proofOf } from "./proof";
export { type Refusal, refusalOf } from "./refusal";
