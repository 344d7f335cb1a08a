/** What stands under a setting that is being changed, before it is saved. */
import { renderToStaticMarkup } from 'react-dom/server';
import { describe, expect, it } from 'vitest';
import { ChangePanel } from '#ui/admin/settings/change-panel.tsx';
import type { Preview } from '#ui/admin/settings/settings-preview.tsx';

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
  since: '2026-01-26',
  looked: 393,
  differing: 7,
  bolder: 1,
  moreCautious: 4,
  patients: 2,
  lines: [],
};
const shown = (preview: Preview | null, isReplayed = true): string =>
  renderToStaticMarkup(
    <ChangePanel
      id="severe-pain"
      changing={{ asking, preview, look: () => undefined, forget: () => undefined, save: () => undefined }}
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
    expect(html).toContain('393 decisions since');
    expect(html).toContain(
      '7 would have differed, of 2 patients: 4 more cautious, 1 bolder, 2 the same decision with another step',
    );
  });

  it('says that none would have differed rather than nothing', () => {
    expect(shown({ ...counts, differing: 0, bolder: 0, moreCautious: 0 })).toContain(
      'None would have differed.',
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
