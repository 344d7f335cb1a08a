/** Check rows of the strength sheet that are not tests, each with its reason. */
export const leftOut: readonly {
  readonly sheet: 'strength';
  readonly row: number;
  readonly reason: string;
}[] = [];
