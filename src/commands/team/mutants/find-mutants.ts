/** Mutants of a source text: one small change each, of the kinds a slip of the hand makes. */
import { parseAst } from 'vite';

export interface Mutant {
  readonly file: string;
  readonly start: number;
  readonly end: number;
  readonly line: number;
  readonly before: string;
  readonly after: string;
}

interface Node {
  readonly type: string;
  readonly start: number;
  readonly end: number;
  readonly [key: string]: unknown;
}

type Change = Pick<Mutant, 'start' | 'end' | 'after'>;

const isNode = (value: unknown): value is Node =>
  typeof value === 'object' && value !== null && typeof (value as Node).type === 'string';

const operators: Readonly<Record<string, readonly string[]>> = {
  '<': ['<=', '>='],
  '<=': ['<', '>'],
  '>': ['>=', '<='],
  '>=': ['>', '<'],
  '===': ['!=='],
  '!==': ['==='],
  '+': ['-'],
  '-': ['+'],
  '*': ['/'],
  '/': ['*'],
  '&&': ['||'],
  '||': ['&&'],
  '+=': ['-='],
  '-=': ['+='],
};

const names: Readonly<Record<string, string>> = {
  min: 'max',
  max: 'min',
  floor: 'ceil',
  ceil: 'floor',
  every: 'some',
  some: 'every',
};

/** The operator stands between two parts, with nothing but blanks and brackets beside it. */
const ofOperator = (text: string, left: Node, right: Node, operator: string): readonly Change[] => {
  const start = text.indexOf(operator, left.end);
  if (start < 0 || start >= right.start) return [];
  return (operators[operator] ?? []).map((after) => ({ start, end: start + operator.length, after }));
};

/** `a ?? b` → a alone, or b alone. */
const ofDefault = (text: string, node: Node, left: Node, right: Node): readonly Change[] =>
  [left, right].map((kept) => ({
    start: node.start,
    end: node.end,
    after: `(${text.slice(kept.start, kept.end)})`,
  }));

const ofLiteral = ({ start, end, value }: Node): readonly Change[] => {
  if (typeof value === 'boolean') return [{ start, end, after: String(!value) }];
  if (typeof value !== 'number' || !Number.isInteger(value)) return [];
  return [value + 1, value - 1].map((after) => ({
    start,
    end,
    after: after < 0 ? `(${after})` : String(after),
  }));
};

const isIn = (node: Node, type: RegExp): boolean => type.test(node.type);

const changesAt = (text: string, node: Node): readonly Change[] => {
  const { left, right, operator, property } = node;
  if (isIn(node, /^(Binary|Logical|Assignment)Expression$/) && isNode(left) && isNode(right)) {
    const ofItself = ofOperator(text, left, right, String(operator));
    return operator === '??' ? ofDefault(text, node, left, right) : ofItself;
  }
  if (node.type === 'Literal') return ofLiteral(node);
  if (node.type === 'MemberExpression' && isNode(property) && node.computed === false) {
    const after = names[String(property.name)];
    return after ? [{ start: property.start, end: property.end, after }] : [];
  }
  return [];
};

/** Types and the words of citations change nothing that is decided. */
const isLeftOut = (node: Node): boolean =>
  node.type.startsWith('TS') && !/^TS(As|Satisfies|NonNull)Expression$/.test(node.type);

const changesIn = (text: string, node: Node): readonly Change[] => {
  if (isLeftOut(node)) return [];
  const below = Object.values(node)
    .flat()
    .filter(isNode)
    .flatMap((child) => changesIn(text, child));
  return [...changesAt(text, node), ...below];
};

export const mutantsOf = (file: string, text: string): readonly Mutant[] =>
  changesIn(text, parseAst(text, { lang: 'ts' }, file) as unknown as Node).map((change) => ({
    ...change,
    file,
    line: text.slice(0, change.start).split('\n').length,
    before: text.slice(change.start, change.end),
  }));

export const mutated = (text: string, { start, end, after }: Mutant): string =>
  text.slice(0, start) + after + text.slice(end);
