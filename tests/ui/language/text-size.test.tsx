/** The size of the text that was chosen on this phone, before the page is painted. */
import { readFileSync } from 'node:fs';
import { runInNewContext } from 'node:vm';
import { renderToStaticMarkup } from 'react-dom/server';
import { afterEach, describe, expect, it, vi } from 'vitest';
import { textSizeCookie, textSizeScript, textSizes, writeIn, writtenIn } from '#ui/language/text-size.ts';
import { cookieNames } from '#ui/patient/preferences/chosen.ts';

/** A document element, as far as it is used. */
const documentWith = (cookie: string) => {
  const attributes = new Map<string, string>();
  return {
    cookie,
    documentElement: {
      setAttribute: (name: string, value: string) => void attributes.set(name, value),
      removeAttribute: (name: string) => void attributes.delete(name),
      getAttribute: (name: string) => attributes.get(name) ?? null,
    },
  };
};

const afterScript = (cookie: string): string | null => {
  const document = documentWith(cookie);
  runInNewContext(textSizeScript, { document });
  return document.documentElement.getAttribute('data-text-size');
};

const css = readFileSync('src/ui/design-system/styles/base.css', 'utf8');

/** The share of the browser's size each choice stands for; null where no rule names it. */
const percentOf = (size: string): number | null => {
  const found = new RegExp(
    `html\\[data-text-size="${size}"\\]:has\\(\\.frame-patient\\) \\{\\s*font-size: (\\d+)%;`,
  ).exec(css);
  return found ? Number(found[1]) : null;
};

afterEach(() => vi.unstubAllGlobals());

describe('the size of the text', () => {
  it('is set in the head from the cookie of this phone, wherever it stands among others', () => {
    expect(afterScript(`loadgate-language=de; ${textSizeCookie}=largest; loadgate-unit=kg`)).toBe('largest');
    expect(afterScript(`${textSizeCookie}=larger`)).toBe('larger');
    expect(afterScript(`a=b; ${textSizeCookie}=larger-still`)).toBe('larger-still');
  });

  it('is the browser’s own without a choice, and where the cookie says what no page offers', () => {
    expect(afterScript('')).toBeNull();
    expect(afterScript(`${textSizeCookie}=as-browser`)).toBeNull();
    expect(afterScript(`${textSizeCookie}=largest-of-all`)).toBeNull();
    expect(afterScript(`not-${textSizeCookie}=largest`)).toBeNull();
  });

  it('stands in the head as it was written: the server changes no sign of it', () => {
    expect(renderToStaticMarkup(<script>{textSizeScript}</script>)).toBe(
      `<script>${textSizeScript}</script>`,
    );
  });

  it('is kept under the cookie the head reads', () => {
    expect(cookieNames.text).toBe(textSizeCookie);
  });

  it('grows from choice to choice, to twice the browser’s, and not for staff', () => {
    const percents = textSizes.filter((size) => size !== 'as-browser').map((size) => percentOf(size) ?? 0);
    expect(percents).toEqual([...new Set(percents)].sort((a, b) => a - b));
    expect([percents[0]! > 100, percents.at(-1)]).toEqual([true, 200]);
    // Every rule of it asks for a patient's frame.
    expect(css.match(/\[data-text-size[^{]*/g)).toHaveLength(percents.length);
  });

  it('changes at once on the page, and goes back to the browser’s own', () => {
    vi.stubGlobal('document', documentWith(''));
    expect(writtenIn()).toBe('as-browser');
    for (const size of textSizes) {
      writeIn(size);
      expect(writtenIn()).toBe(size);
    }
    writeIn('as-browser');
    expect(writtenIn()).toBe('as-browser');
  });
});
