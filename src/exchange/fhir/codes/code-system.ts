/** The own codes as a resource, and the notices that go with every export. */
import type { CodeSystem } from 'fhir/r4';
import { loincNotice, ownSystem } from '../names.ts';
import { ownCodes } from './own-codes.ts';

export const ownCodeSystem = (): CodeSystem => ({
  resourceType: 'CodeSystem',
  id: 'loadgate',
  url: ownSystem,
  version: '1',
  name: 'Loadgate',
  title: 'Codes of Loadgate',
  status: 'active',
  description:
    'For what no free code system names: measures, answers, doses, rules. The address is a name and leads nowhere. An export is a collection of one record; it is no International Patient Summary, and lists of medicines, allergies and problems are not kept here.',
  copyright: loincNotice,
  caseSensitive: true,
  content: 'complete',
  count: ownCodes.size,
  concept: [...ownCodes].map(([code, display]) => ({ code, display })),
});
