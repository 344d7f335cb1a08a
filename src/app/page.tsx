/** The start: each to their own first page. */
import { redirect } from 'next/navigation';
import { signedInPerson } from '#server/caller.ts';
import { phoneHere } from '#server/phone-here.ts';

const starts = { clinician: '/worklist', patient: '/today', administrator: '/administration' } as const;

const StartPage = async () => {
  const person = await signedInPerson();
  if (!person && (await phoneHere()) !== 'none') redirect('/pin');
  redirect(person ? starts[person.role] : '/sign-in');
};

export default StartPage;
