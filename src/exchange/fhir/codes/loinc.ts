/** LOINC codes that are written. What has none here stands under a code of the own system. */
export const loinc = {
  bodyWeight: '29463-7',
  bodyHeight: '8302-2',
  bloodPressure: '85354-9',
  systolic: '8480-6',
  diastolic: '8462-4',
  /** Severity from 0 to 10, as somebody reported it. */
  pain: '72514-3',
  gripRight: '83174-3',
  midUpperArmRight: '56072-2',
} as const;

export const loincCodes: ReadonlySet<string> = new Set(Object.values(loinc));
