/** The start: each to their own first page. */
import { redirect } from 'next/navigation';
import { signedInPerson } from '#server/http/caller.ts';
import { phoneHere } from '#server/sign-in/phone-here.ts';

const starts = {
  clinician: '/worklist',
  patient: '/today',
  administrator: '/administration',
  reception: '/reception',
} as const;

const StartPage = async () => {
  const person = await signedInPerson();
  if (!person && (await phoneHere()) !== 'none') redirect('/pin');
  redirect(person ? starts[person.role] : '/sign-in');
};

export default StartPage;
