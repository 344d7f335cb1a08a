/** What stands under a setting that is being changed, before it is saved. */
import { renderToStaticMarkup } from 'react-dom/server';
import { describe, expect, it } from 'vitest';
import { ChangePanel } from '#ui/admin/settings/change-panel.tsx';
import type { Preview } from '#ui/admin/settings/use-setting-change.ts';

const asking = {
  problems: [],
  isBusy: false,
  waiting: null,
  errorOf: () => undefined,
  ask: async () => undefined,
  t: () => undefined,
  forget: () => undefined,
};
const counts: Preview = {
  lookedAt: 'seal',
  since: '2026-01-26',
  looked: 393,
  differing: 7,
  bolder: 1,
  moreCautious: 4,
  bolderTo: { pause: 0, 'ease-back': 0, hold: 1, progress: 0 },
  moreCautiousTo: { pause: 1, 'ease-back': 3, hold: 0, progress: 0 },
  patients: 2,
  weeks: [
    { from: '2026-01-26', moreCautious: 4, bolder: 0 },
    { from: '2026-02-02', moreCautious: 0, bolder: 1 },
  ],
  lines: [],
};
const shown = (preview: Preview | null, isReplayed = true): string =>
  renderToStaticMarkup(
    <ChangePanel
      id="severe-pain"
      changing={{
        asking,
        preview,
        job: null,
        look: () => undefined,
        forget: () => undefined,
        save: () => undefined,
      }}
      isReplayed={isReplayed}
      reason=""
      onReason={() => undefined}
      saveLabel="Save 7"
      keepLabel="Keep 8"
      onKeep={() => undefined}
    />,
  );

describe('a setting being changed', () => {
  it('cannot be saved before it was shown what it would have changed', () => {
    const html = shown(null);
    expect(html).toContain('Show what it would have changed');
    expect(html).not.toContain('Save 7');
  });

  it('says beside the button that saves it how many past decisions it would have changed, and how', () => {
    const html = shown(counts);
    expect(html).toContain('Save 7');
    expect(html).toContain('393 days of joints since');
    expect(html).toContain(
      '7 days would have differed, of 2 patients: 4 more cautious, 1 bolder, 2 bolder in one answer and more cautious in another',
    );
  });

  it('draws one mark for each decision that would have been another, bolder ones by another shape', () => {
    const html = shown(counts);
    expect(html.match(/class="cautious"/g)).toHaveLength(4);
    expect(html.match(/class="bolder"/g)).toHaveLength(1);
    expect(html).toContain('filled is more cautious, outlined is bolder');
  });

  it.each([
    [8, 8, ''],
    [9, 7, '+2'],
    [40, 7, '+33'],
  ])('counts what finds no room in a week: %i', (moreCautious, drawn, rest) => {
    const html = shown({ ...counts, weeks: [{ from: '2026-01-26', moreCautious, bolder: 0 }] });
    expect(html.match(/class="cautious"/g)).toHaveLength(drawn);
    expect(html.includes('+')).toBe(rest !== '');
    expect(html).toContain(rest);
  });

  it.each([
    [13, 13, 'by week'],
    [14, 7, '2 weeks together'],
    [52, 13, '4 weeks together'],
  ])('draws %i weeks as %i columns, with every mark', (count, columns, said) => {
    const weeks = Array.from({ length: count }, () => ({ from: '2026-01-26', moreCautious: 1, bolder: 0 }));
    const html = shown({ ...counts, weeks });
    expect(html.match(/<g>/g)).toHaveLength(columns);
    expect(html.match(/class="cautious"/g)).toHaveLength(count);
    expect(html).toContain(said);
  });

  it('says that none would have differed rather than nothing', () => {
    expect(shown({ ...counts, differing: 0, bolder: 0, moreCautious: 0 })).toContain(
      'On no day would the answer have been another one. Doses were not worked out again.',
    );
  });

  it('says where no decision on record was made with it, and is saved at once then', () => {
    const html = shown(null, false);
    expect(html).toContain('No decision on record was made with this setting');
    expect(html).toContain('Save 7');
  });

  it('has one primary button at a time', () => {
    for (const html of [shown(null), shown(counts), shown(null, false)])
      expect(html.match(/class="button"/g)).toHaveLength(1);
  });
});
