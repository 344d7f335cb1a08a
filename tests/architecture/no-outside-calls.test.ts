/** Nothing is fetched from outside: no address of another host, no web font, no remote style. */
import { describe, expect, it } from 'vitest';
import { allFiles, isCode, textOf, withoutComments } from './repository.ts';

/** Addresses that are names and never fetched, and the machine itself. */
const names = [
  /^http:\/\/www\.w3\.org\//, // XML namespaces
  /^http:\/\/(terminology\.)?(hl7|loinc|unitsofmeasure|snomed)\.(org|info)\b/, // code systems
  /^https:\/\/loadgate\.invalid\b/, // a name that is reserved never to lead anywhere
  /^https?:\/\/(127\.0\.0\.1|localhost|\[::1\])/,
  /^https?:\/\/\$\{/, // built from the settings
  /^https:\/\/clinic\.example\b/, // the example in a message about settings
];

const remoteStyles = [
  /next\/font\/google/,
  /@import\s+url/,
  /fonts\.(googleapis|gstatic)/,
  /src:\s*url\(\s*['"]?https?:/,
];

const outside = (text: string): readonly string[] => [
  ...(text.match(/(?:https?|wss?):\/\/[^\s'"`)<>\\]*/g) ?? []).filter(
    (address) => address !== 'https://' && !names.some((name) => name.test(address)),
  ),
  ...(text.match(/['"`(]\/\/[a-z0-9-]+\.[a-z]{2,}/gi) ?? []),
  ...remoteStyles.flatMap((style) => text.match(style)?.[0] ?? []),
];

describe('the product calls nobody', () => {
  it('no source names an address outside', () => {
    const found = allFiles()
      .filter(
        (file) =>
          /^(src|demo-clinic|next\.config)/.test(file) && /\.(ts|tsx|mjs|js|css|html|json)$/.test(file),
      )
      .flatMap((file) =>
        outside(isCode(file) ? withoutComments(file) : textOf(file)).map((at) => `${file}: ${at}`),
      );
    expect(found).toEqual([]);
  });

  it.each([
    "fetch('https://example.com/x')",
    "import { Inter } from 'next/font/google'",
    "@import url('x.css')",
    "src='//cdn.example/x.js'",
    "new WebSocket('wss://example.com')",
  ])('would find %s', (text) => {
    expect(outside(text)).not.toEqual([]);
  });
});
