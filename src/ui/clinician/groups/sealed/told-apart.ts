/** Two people of one first name in a room: a word that is no surname tells them apart, or the hour is not sealed. */

export interface Named {
  readonly patientId: string;
  readonly firstName: string;
}

/** Typed by the person's id. */
export type Marks = Readonly<Record<string, string>>;

const plain = (text: string): string => text.trim().toLowerCase();

/** Who has a first name that somebody else has too. */
export const ofOneName = <P extends Named>(people: readonly P[]): readonly P[] =>
  people.filter((one) =>
    people.some((other) => other !== one && plain(other.firstName) === plain(one.firstName)),
  );

export const areToldApart = (people: readonly Named[], marks: Marks): boolean => {
  const same = ofOneName(people);
  const said = same.map(({ patientId, firstName }) => `${plain(firstName)} ${plain(marks[patientId] ?? '')}`);
  return (
    same.every(({ patientId }) => plain(marks[patientId] ?? '') !== '') && new Set(said).size === said.length
  );
};

/** `room`: everybody who is there, also who stays behind. */
export const marked = <P extends Named>(
  people: readonly P[],
  marks: Marks,
  room: readonly Named[],
): readonly (P & { readonly mark?: string })[] => {
  const same = ofOneName(room).map(({ patientId }) => patientId);
  return people.map((one) =>
    same.includes(one.patientId) ? { ...one, mark: marks[one.patientId]?.trim() } : one,
  );
};
