/** Id of the button that opens a step. */
export function stepButtonId(stepId: string): string {
  return `step-button-${stepId}`;
}
