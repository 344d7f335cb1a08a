/** Held by the service worker and opened without signal: a page for anybody, with nobody's data in it. */
import type { Metadata } from 'next';
import { say } from '#messages/en/staff/groups/sealed.ts';
import { SealedHourScreen } from '#ui/clinician/groups/sealed/sealed-hour-screen.tsx';
import '../../../ui/clinician/styles/groups.css';

export const metadata: Metadata = { title: say('title') };

const SealedHourPage = () => <SealedHourScreen />;

export default SealedHourPage;
