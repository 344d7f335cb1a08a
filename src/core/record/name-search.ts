/** Finding a person by any part of the name, accents and capitals apart. */

const folded = (text: string): string => text.normalize('NFD').replace(/\p{M}/gu, '').toLowerCase();

interface Named {
  readonly givenName: string;
  readonly familyName: string;
}

/** Every part typed stands somewhere in the name, in any order; nothing typed is in every name. */
export const isNamedLike = (person: Named, typed: string): boolean => {
  const name = folded(`${person.familyName} ${person.givenName}`);
  return folded(typed)
    .split(/\s+/)
    .every((part) => name.includes(part));
};
