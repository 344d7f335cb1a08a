/** What the front desk is answered, as the server holds it. */
import type { createCaller } from '#api/root.ts';

type Desk = ReturnType<typeof createCaller>['reception'];

export type PersonLine = Awaited<ReturnType<Desk['appointments']>>[number];
export type FoundPeople = Awaited<ReturnType<Desk['find']>>;
export type ReceptionPerson = Awaited<ReturnType<Desk['person']>>;
