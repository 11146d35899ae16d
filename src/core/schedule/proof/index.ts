export { type Proof, proofOf } from "./proof";
