declare module "logic-solver" {
  namespace Logic {
    type Term = string | object;
    const TRUE: Term;
    const FALSE: Term;
    function or(...terms: (Term | readonly Term[])[]): Term;
    function and(...terms: (Term | readonly Term[])[]): Term;
    class Solver {
      require(...terms: Term[]): void;
      solve(): object | null;
      solveAssuming(term: Term): object | null;
    }
  }
  export default Logic;
}
