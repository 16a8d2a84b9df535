/** Takes a check's inputs to the public function and names what comes out as the check's `expected` does. */
export type Runner = (inputs: Readonly<Record<string, unknown>>) => Readonly<Record<string, unknown>>;
