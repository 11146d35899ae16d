declare module "logic-solver" {
  namespace Logic {
    type Term = string | object;
    const TRUE: Term;
    const FALSE: Term;
    function or(...terms: (Term | readonly Term[])[]): Term;
    function and(...terms: (Term | readonly Term[])[]): Term;
    function not(term: Term): Term;
    function implies(condition: Term, then: Term): Term;
    function equiv(a: Term, b: Term): Term;
    function exactlyOne(...terms: (Term | readonly Term[])[]): Term;
    /** A whole number as bits. */
    type Bits = object;
    function constantBits(number: number): Bits;
    function weightedSum(terms: readonly Term[], weights: readonly number[]): Bits;
    function sum(...terms: (Term | Bits)[]): Bits;
    function lessThanOrEqual(a: Bits, b: Bits): Term;
    class Solver {
      require(...terms: Term[]): void;
      solve(): object | null;
      solveAssuming(term: Term): object | null;
    }
  }
  export default Logic;
}
