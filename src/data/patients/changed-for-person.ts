import type { Access } from '../access.ts';
import { changed } from '../changed.ts';
import { mergedWith } from './merges.ts';

/** What speaks about the person, not only about this record, has changed: the person's other records rest on it too. */
export const changedForPerson = async (access: Access, patientId: string): Promise<void> => {
  changed(access, patientId);
  for (const id of await mergedWith(access, patientId)) changed(access, id);
};
