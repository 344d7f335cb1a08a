/** Where a figure comes from and how it is known. A figure from memory is labelled wherever it is shown. */
import type { Mark as CitationMark } from '#core/sources/citation.ts';
import type { Source } from '#core/sources/source.ts';

const markWords: Readonly<Record<CitationMark, string>> = {
  seen: 'read at the source',
  'second-hand': 'second-hand',
  memory: 'from memory, not checked against the source',
  computed: 'computed here from cited figures',
  design: 'a choice of this project, no source',
  'common-practice': 'common practice, no source',
};

export interface SourceNoteProps {
  /** Left out for a choice or common practice. */
  readonly source?: Source;
  readonly locator?: string;
  readonly mark: CitationMark;
  readonly remark?: string;
}

const named = (source: Source): string =>
  [
    source.authors,
    source.year === null ? null : String(source.year),
    source.title,
    source.container,
    source.identifier,
  ]
    .filter(Boolean)
    // "et al." ends in the stop that would follow it.
    .map((part) => String(part).replace(/\.$/, ''))
    .join('. ');

export const SourceNote = ({ source, locator, mark, remark }: SourceNoteProps) => (
  <p className="source-note">
    Source: {source ? `${named(source)}${locator ? `, ${locator}` : ''} ` : null}
    <span className="source-mark">({markWords[mark]})</span>
    {remark ? ` ${remark}` : null}
  </p>
);
