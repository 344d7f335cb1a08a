/** Whether a version came by itself within limits that a clinician signed before. */
export const isWithinSigned = (version: {
  readonly origin: string;
  readonly signedAt: number | null;
  readonly recordedAt: number;
}): boolean => version.origin !== 'clinician' && version.signedAt === version.recordedAt;
