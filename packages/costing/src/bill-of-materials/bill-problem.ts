/** What is wrong with one field of a design or its bill, and what to do. */
export interface BillProblem {
  /** Path into the design: "bill.parts.3.material". */
  readonly field: string;
  readonly message: string;
  readonly mend: string;
}
