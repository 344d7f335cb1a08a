/** Version 3 on the page of clinic settings: what it says of itself, and what its button fills in. */
import type { ReactElement } from 'react';
import { renderToStaticMarkup } from 'react-dom/server';
import { describe, expect, it } from 'vitest';
import { engineDefaults } from '#core/decision/settings.ts';
import { version3 } from '#core/decision/version-3-settings.ts';
import { Version3Part } from '#ui/admin/version-3-part.tsx';

const textOf = (values: object) =>
  Object.fromEntries(Object.entries(values).map(([id, value]) => [id, String(value)]));

const shown = (typed: Readonly<Record<string, string>>) => {
  const filled: Readonly<Record<string, string>>[] = [];
  const part = Version3Part({ typed, delivered: engineDefaults, onFill: (values) => filled.push(values) });
  const children = (part as ReactElement<{ children: readonly ReactElement<{ onClick: () => void }>[] }>)
    .props.children;
  children.at(-1)!.props.onClick();
  return { html: renderToStaticMarkup(part), filled: filled[0]! };
};

describe('version 3 among the clinic settings', () => {
  it('is not filled in as delivered, says that no person was seen, and its button fills in the whole set', () => {
    const { html, filled } = shown(textOf(engineDefaults));
    expect(html).toContain('It is not filled in.');
    expect(html).toContain('Nothing of it was seen in a person');
    expect(filled).toEqual(textOf(version3));
  });

  it('once filled in, its button gives back what was delivered and touches nothing else', () => {
    const { html, filled } = shown({ ...textOf(engineDefaults), ...textOf(version3) });
    expect(html).toContain('It is filled in.');
    expect(Object.keys(filled)).toEqual(Object.keys(version3));
    for (const [id, value] of Object.entries(filled))
      expect(value).toBe(String(engineDefaults[id as keyof typeof engineDefaults]));
  });

  it('with one of its numbers changed it does not say that it is filled in', () => {
    const { html } = shown({ ...textOf(engineDefaults), ...textOf(version3), 'swap-rise': '1' });
    expect(html).toContain('It is not filled in.');
  });
});
