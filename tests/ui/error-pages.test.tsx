/** What a person sees when something of ours breaks: nothing of what they typed, nothing of the fault. */
import { renderToStaticMarkup } from 'react-dom/server';
import { describe, expect, it } from 'vitest';
import { markedNumber, markedText } from '#tests/support/planted.ts';
import Broken from '../../src/app/error.tsx';
import NotFound from '../../src/app/not-found.tsx';

describe('pages that say something is wrong', () => {
  it('a fault that quotes a record is shown without its words', () => {
    const fault = Object.assign(new Error(`${markedText} hurts ${markedNumber}`), {
      digest: markedText,
      cause: markedText,
    });
    const page = renderToStaticMarkup(<Broken error={fault} reset={() => undefined} />);
    expect(page).toMatch(/<h1/);
    expect(page).not.toContain(markedText);
    expect(page).not.toContain(String(markedNumber));
    expect(page).not.toMatch(/\bat .*\.tsx?|Error:|node_modules/);
  });

  it('an address that leads nowhere is not repeated', () => {
    const page = renderToStaticMarkup(<NotFound />);
    expect(page).toMatch(/<h1/);
    expect(page).not.toMatch(/\/patients\/|Error:/);
  });
});
