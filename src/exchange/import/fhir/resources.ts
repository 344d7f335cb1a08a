/** The resources of a Bundle, or of lines of JSON, each with its place. */
import type { FhirResource } from 'fhir/r4';
import { textOf } from '../csv/text.ts';
import { type Bytes, CannotRead } from '../source.ts';

export interface Placed {
  readonly place: number;
  /** What references within the file may call it by; a line has none. */
  readonly fullUrl: string | null;
  /** null = no resource stands there. */
  readonly resource: FhirResource | null;
}

const isObject = (value: unknown): value is Record<string, unknown> =>
  typeof value === 'object' && value !== null && !Array.isArray(value);

const asResource = (value: unknown): FhirResource | null =>
  isObject(value) && typeof value.resourceType === 'string' ? (value as unknown as FhirResource) : null;

/** A Bundle is read whole; lines are for what is longer. */
const mostCharacters = 64 * 1024 * 1024;

const parsed = (text: string): unknown => {
  try {
    return JSON.parse(text);
  } catch {
    return undefined;
  }
};

async function* ofBundle(bytes: Bytes): AsyncIterable<readonly Placed[]> {
  let text = '';
  for await (const piece of textOf(bytes, 'utf-8')) {
    text += piece;
    if (text.length > mostCharacters)
      throw new CannotRead('The Bundle is longer than 64 MB. Write it as lines, one resource a line.');
  }
  const bundle = parsed(text);
  if (!isObject(bundle) || bundle.resourceType !== 'Bundle')
    throw new CannotRead('The file is no Bundle. If it has one resource a line, say that it is of lines.');
  const entries: unknown[] = Array.isArray(bundle.entry) ? bundle.entry : [];
  yield entries.map((entry, at) => ({
    place: at + 1,
    fullUrl:
      isObject(entry) && typeof entry.fullUrl === 'string' && entry.fullUrl !== '' ? entry.fullUrl : null,
    resource: isObject(entry) ? asResource(entry.resource) : null,
  }));
}

const mostOfLine = 1024 * 1024;

async function* ofLines(bytes: Bytes): AsyncIterable<readonly Placed[]> {
  let rest = '';
  let place = 0;
  const read = (line: string): readonly Placed[] => {
    place += 1;
    return line.trim() === '' ? [] : [{ place, fullUrl: null, resource: asResource(parsed(line)) }];
  };
  for await (const piece of textOf(bytes, 'utf-8')) {
    const lines = (rest + piece).split('\n');
    rest = lines.pop()!;
    if (rest.length > mostOfLine)
      throw new CannotRead(`Line ${place + lines.length + 1} is longer than 1 MB.`);
    yield lines.flatMap(read);
  }
  yield read(rest);
}

export const resourcesOf = (bytes: Bytes, isLines: boolean): AsyncIterable<readonly Placed[]> =>
  isLines ? ofLines(bytes) : ofBundle(bytes);
