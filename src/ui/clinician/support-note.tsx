/** The source behind a figure, from its key; a choice of the clinic or common practice says so. */

import type { Citation } from '#core/sources/citation.ts';
import { sources } from '#core/sources/index.ts';
import { say } from '#messages/en/staff/clinic.ts';
import { SourceNote } from '#ui/design-system/source-note.tsx';

export const CitationNote = ({ citation }: { readonly citation: Citation }) => (
  <SourceNote
    source={sources[citation.source]}
    locator={citation.locator}
    mark={citation.mark}
    remark={citation.remark}
  />
);

/** Short: authors and year, or what stands in place of a source. */
export const supportInWords = (support: string): string => {
  if (support === 'common-practice') return say('common-practice-no-source');
  if (support === 'clinic' || support === 'clinic-choice' || support === 'design')
    return say('a-clinic-setting');
  if (support === 'computed') return say('computed-here');
  const source = sources[support];
  if (!source) return support;
  return source.year === null ? source.authors : `${source.authors} ${source.year}`;
};
