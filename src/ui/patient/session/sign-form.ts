/** How a session asks for warning signs: by the whole list, the short question, or a statement. */
import type { SignForm } from '#core/danger/signs-asked.ts';
import type { FlagsWhen, SessionDraft } from './draft.ts';

/** In which form a time of asking asks. */
export const signFormOf = (
  { signForm, wholeLists = [] }: Pick<SessionDraft, 'signForm' | 'wholeLists'>,
  when: FlagsWhen,
): SignForm =>
  signForm !== 'short' || when === 'now' || wholeLists.includes(when)
    ? 'list'
    : when === 'before'
      ? 'short'
      : 'statement';
