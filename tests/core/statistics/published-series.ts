/** Published and worked data, typed from the places named. */

/** NIST/SEMATECH e-Handbook 6.3.2.4, EWMA control charts: data of the example. */
export const nistEwma = [
  52.0, 47.0, 53.0, 49.3, 50.1, 47.0, 51.0, 50.1, 51.2, 50.5, 49.6, 47.6, 49.9, 51.3, 47.8, 51.2, 52.6, 52.4,
  53.6, 52.1,
] as const;

/** NIST/SEMATECH e-Handbook 6.3.2.4: the printed EWMA statistics. */
export const nistEwmaPrinted = [
  50.6, 49.52, 50.56, 50.18, 50.16, 49.21, 49.75, 49.85, 50.26, 50.33, 50.11, 49.36, 49.52, 50.05, 49.38,
  49.92, 50.73, 51.23, 51.94, 51.99,
] as const;

/** NIST/SEMATECH e-Handbook 6.3.2.3, CUSUM control charts: 20 group means, target 325. */
export const nistCusum = [
  324.925, 324.675, 324.725, 324.35, 325.35, 325.225, 324.125, 324.525, 325.225, 324.6, 324.625, 325.15,
  328.325, 327.25, 327.825, 328.5, 326.675, 327.775, 326.875, 328.35,
] as const;

/** Montgomery's example of 30 values, mean 10 and deviation 1, as quoted in a statistics library's manual. */
export const montgomery = [
  9.45, 7.99, 9.29, 11.66, 12.16, 10.18, 8.04, 11.46, 9.2, 10.34, 9.03, 11.47, 10.51, 9.4, 10.08, 9.37, 10.62,
  10.31, 8.52, 10.84, 10.9, 9.33, 12.29, 11.5, 10.6, 11.08, 10.38, 11.62, 11.31, 10.52,
] as const;

/** Mann–Kendall by hand, College of the Holy Cross: 14 values. */
export const holyCross = [
  12.9, 14.8, 13.2, 15.7, 13.8, 15.6, 12.9, 11.0, 17.3, 15.9, 19.0, 18.3, 20.1, 21.7,
] as const;

/** A worked pain diary: 14 baseline mornings and 7 new ones. */
export const painBaseline = [3, 2, 3, 3, 2, 4, 3, 3, 2, 3, 3, 4, 2, 3] as const;
export const painDays = [3, 4, 4, 5, 5, 4, 6] as const;

/** A worked rising pain series of 14 days. */
export const risingPain = [2, 3, 2, 2, 4, 3, 3, 5, 4, 4, 5, 6, 5, 6] as const;

/** A worked diary of 28 days of load and pain. */
export const loadDays = [
  10, 0, 12, 0, 15, 0, 0, 12, 0, 16, 0, 18, 0, 0, 10, 0, 14, 0, 20, 0, 0, 16, 0, 18, 0, 22, 0, 0,
] as const;
export const painOfLoadDays = [
  2, 2, 3, 2, 3, 2, 3, 2, 2, 3, 3, 4, 3, 4, 3, 3, 2, 3, 3, 3, 5, 4, 3, 4, 4, 4, 5, 5,
] as const;
