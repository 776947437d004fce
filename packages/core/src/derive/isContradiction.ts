/**
 * Whether an error says that the inputs of a quantity cannot be. Running out of stack is a RangeError too, but a
 * defect of ours, not of the inputs.
 */
export function isContradiction(error: unknown): error is RangeError {
  return error instanceof RangeError && !/call stack/i.test(error.message);
}
