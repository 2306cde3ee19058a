// What the tests take of the integrator of differential equations, which comes without types that a
// strict compiler bears: its sources are found in their place, and fail.
export class Solver {
  constructor(variables: number);
  absoluteTolerance: number;
  relativeTolerance: number;
  solve(
    rate: (x: number, y: number[]) => number[],
    from: number,
    start: readonly number[],
    to: number,
  ): { readonly y: number[] };
}
