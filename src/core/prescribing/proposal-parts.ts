/**
 * What of a proposal stands open on every screen, and what may be folded beside it. Nothing is left out: each
 * caution and each note is in one of the two. A choice of this project, and when in doubt a thing stands open.
 */
import type { Note } from '../outcome.ts';
import type { Caution } from './cautions/caution.ts';

/** Said of every such dose alike, whoever it is for. */
const generalNotes: ReadonlySet<string> = new Set([
  'why-a-floor',
  'reserve-uncertain-in-long-sets',
  'evidence-limits',
  'hand-evidence',
  'clinician-decides',
  'estimate-not-measurement',
]);

/** What goes with every dose of a kind; all other cautions come from this person's own record. */
const generalSources: ReadonlySet<string> = new Set(['always', 'method', 'joint', 'exercise']);

/** By its words: the same caution with other figures is new. */
export const cautionsNewTo = <C extends Pick<Caution, 'text'>>(
  cautions: readonly C[],
  known: readonly Pick<Caution, 'text'>[],
): readonly C[] => {
  const texts = new Set(known.map(({ text }) => text));
  return cautions.filter(({ text }) => !texts.has(text));
};

const parted = <T>(all: readonly T[], isOpen: (one: T) => boolean) => ({
  open: all.filter(isOpen),
  folded: all.filter((one) => !isOpen(one)),
});

export const notesParted = (notes: readonly Note[]) => parted(notes, ({ code }) => !generalNotes.has(code));

/**
 * Open is what comes from this person's answers, medicines and limits, and what the dose in force has not.
 * `inForce` is null where the exercise is new: then what goes with every such dose is not said again.
 */
export const cautionsParted = <C extends Pick<Caution, 'text' | 'from'>>(
  cautions: readonly C[],
  inForce: readonly Pick<Caution, 'text'>[] | null,
) => {
  const added = inForce === null ? [] : cautionsNewTo(cautions, inForce);
  return parted(cautions, (caution) => !generalSources.has(caution.from) || added.includes(caution));
};
