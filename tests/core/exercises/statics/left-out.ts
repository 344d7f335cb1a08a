/** Check values of the strength list, rows 53 to 109, that no test repeats, each with its reason. */
export const leftOut: readonly {
  readonly sheet: 'strength';
  readonly row: number;
  readonly reason: string;
}[] = [];
