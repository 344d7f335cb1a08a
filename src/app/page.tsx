/** The start: each to their own first page. */
import { redirect } from 'next/navigation';
import { signedInPerson } from '#server/caller.ts';

const starts = { clinician: '/worklist', patient: '/today', administrator: '/sign-in' } as const;

const StartPage = async () => {
  const person = await signedInPerson();
  redirect(person ? starts[person.role] : '/sign-in');
};

export default StartPage;
