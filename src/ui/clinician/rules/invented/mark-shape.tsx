/** Marks of the picture, told apart by shape as well as by the word beside them. */

/** In a box from −7 to 7. */
const paths: readonly string[] = [
  'M-6-6H6V6H-6Z',
  'M0-7L7 6H-7Z',
  'M0-7L7 0L0 7L-7 0Z',
  'M0 7L7-6H-7Z',
  'M-2.5-7H2.5V-2.5H7V2.5H2.5V7H-2.5V2.5H-7V-2.5H-2.5Z',
  'M-3.5-6.5H3.5L7 0L3.5 6.5H-3.5L-7 0Z',
  'M-7-6H7L0 0L7 6H-7L0 0Z',
  'M-6-7L0 0L-6 7H6L0 0L6-7Z',
];
const own = 'M0-8L2-2.5L8-2.5L3.2 1.2L5 7L0 3.5L-5 7L-3.2 1.2L-8-2.5L-2-2.5Z';
const onLine = 'M0-4A4 4 0 1 0 0 4A4 4 0 1 0 0-4Z';

export type MarkKind = 'own' | 'line' | number;

/** A number is the place among the arms; more arms than shapes begin anew, and the word beside them still tells. */
export const pathOf = (kind: MarkKind): string =>
  kind === 'own' ? own : kind === 'line' ? onLine : paths[kind % paths.length]!;

export const classOf = (kind: MarkKind): string =>
  ['trial-mark', ...(typeof kind === 'string' ? [`trial-mark-${kind}`] : [])].join(' ');

export const MarkShape = ({ kind }: { readonly kind: MarkKind }) => (
  <svg className="trial-key" viewBox="-9 -9 18 18" width="18" height="18" aria-hidden="true">
    <path className={classOf(kind)} d={pathOf(kind)} />
  </svg>
);
