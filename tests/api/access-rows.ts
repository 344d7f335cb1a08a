/**
 * What each procedure answers to each person. "in" means the guards let the call through: it may
 * then answer, or refuse the empty input. A procedure that is not listed here fails the test.
 */
export type Cell = 'in' | 'signed-out' | 'not-yours' | 'not-found' | 'care-team' | 'fresh-sign-in' | 'set-up';
export interface Row {
  readonly clinician: Cell;
  /** The patient of another clinic, asked for by this clinic's clinician. */
  readonly clinicianOnStranger: Cell;
  /** A clinician of a clinic that keeps records to care teams, on a record of another team. */
  readonly outsideTeam: Cell;
  /** The same clinician after giving a reason. */
  readonly openedWithReason: Cell;
  readonly administrator: Cell;
  /** A clinician who also administers the clinic. */
  readonly both: Cell;
  /** The same, an hour after the passphrase was last given. */
  readonly bothAnHourLater: Cell;
  /** The same, who has not chosen an own passphrase yet. */
  readonly bothNotSetUp: Cell;
  readonly patient: Cell;
  readonly signedOut: Cell;
}

const ofClinic: Row = {
  clinician: 'in',
  clinicianOnStranger: 'in',
  outsideTeam: 'in',
  openedWithReason: 'in',
  administrator: 'not-yours',
  both: 'in',
  bothAnHourLater: 'in',
  bothNotSetUp: 'set-up',
  patient: 'not-yours',
  signedOut: 'signed-out',
};
const ofRecord: Row = { ...ofClinic, clinicianOnStranger: 'not-found', outsideTeam: 'care-team' };
const ofName: Row = { ...ofRecord, outsideTeam: 'in' };
const freshOnRecord: Row = { ...ofRecord, bothAnHourLater: 'fresh-sign-in' };
const ofStaff: Row = { ...ofClinic, administrator: 'in' };
const ofAdministrator: Row = {
  ...ofClinic,
  clinician: 'not-yours',
  clinicianOnStranger: 'not-yours',
  outsideTeam: 'not-yours',
  openedWithReason: 'not-yours',
  administrator: 'in',
};
const freshAdministrator: Row = { ...ofAdministrator, bothAnHourLater: 'fresh-sign-in' };
const ofPatient: Row = {
  ...ofAdministrator,
  administrator: 'not-yours',
  both: 'not-yours',
  bothAnHourLater: 'not-yours',
  patient: 'in',
};
const ofPerson: Row = { ...ofStaff, bothNotSetUp: 'in', patient: 'in' };

const freshPerson: Row = { ...ofPerson, bothAnHourLater: 'fresh-sign-in' };

export const expected: Readonly<Record<string, Row>> = {
  'account.changePassphrase': ofPerson,
  'account.endEverywhere': ofPerson,
  'account.endSession': ofPerson,
  'account.me': ofPerson,
  'account.passkeys': ofPerson,
  'account.prove': ofPerson,
  'account.removePasskey': freshPerson,
  'account.sessions': ofPerson,
  'admin.care.coveringClinician': ofAdministrator,
  'admin.care.nameCoveringClinician': freshAdministrator,
  'admin.care.wordings': ofAdministrator,
  'admin.care.writeWording': freshAdministrator,
  'admin.clinicSettings.list': ofStaff,
  'admin.clinicSettings.preview': ofAdministrator,
  'admin.clinicSettings.save': freshAdministrator,
  'admin.sites.add': ofAdministrator,
  'admin.sites.close': ofAdministrator,
  'admin.sites.list': ofAdministrator,
  'admin.staff.add': freshAdministrator,
  'admin.staff.deactivate': freshAdministrator,
  'admin.staff.list': ofAdministrator,
  'admin.staff.reactivate': freshAdministrator,
  'admin.staff.reset': freshAdministrator,
  'admin.staff.setRoles': freshAdministrator,
  'patient.access.list': ofPatient,
  'patient.consents.get': ofPatient,
  'patient.consents.give': ofPatient,
  'patient.consents.withdraw': ofPatient,
  'patient.entries.send': ofPatient,
  'patient.history.get': ofPatient,
  'patient.messages.get': ofPatient,
  'patient.messages.send': ofPatient,
  'patient.preVisit.questions': ofPatient,
  'patient.preVisit.send': ofPatient,
  'patient.today.get': ofPatient,
  'staff.calculations.list': ofClinic,
  'staff.calculations.tryOne': ofClinic,
  'staff.rules.list': ofClinic,
  'staff.bookings.book': ofRecord,
  'staff.care.addEvent': ofRecord,
  'staff.care.addLimit': ofRecord,
  'staff.care.liftLimit': ofRecord,
  'staff.care.list': ofRecord,
  'staff.care.preApprove': ofRecord,
  'staff.care.withdrawPreApproval': ofRecord,
  'staff.consents.list': ofRecord,
  'staff.consents.record': ofRecord,
  'staff.drafts.drop': ofRecord,
  'staff.drafts.get': ofRecord,
  'staff.drafts.save': ofRecord,
  'staff.entries.send': ofRecord,
  'staff.episodes.change': ofRecord,
  'staff.episodes.list': ofRecord,
  'staff.episodes.open': ofRecord,
  'staff.handover.colleagues': ofRecord,
  'staff.handover.get': ofRecord,
  'staff.handover.ownPause': ofRecord,
  'staff.measurements.forms': ofRecord,
  'staff.measurements.list': ofRecord,
  'staff.measurements.record': ofRecord,
  'staff.measurements.recordEffusion': ofRecord,
  'staff.outcomes.get': ofRecord,
  'staff.outcomes.setGoal': ofRecord,
  'staff.documents.get': ofRecord,
  'staff.people.create': ofClinic,
  'staff.people.get': ofRecord,
  'staff.people.list': ofClinic,
  'staff.people.saveProfile': ofRecord,
  'staff.phones.endPhone': ofRecord,
  'staff.phones.invite': ofRecord,
  'staff.phones.list': ofRecord,
  'staff.phones.withdraw': ofRecord,
  'staff.prescriptions.catalogue': ofRecord,
  'staff.prescriptions.end': ofRecord,
  'staff.prescriptions.saveDraft': ofRecord,
  'staff.prescriptions.list': ofRecord,
  'staff.prescriptions.planning': ofRecord,
  'staff.prescriptions.programme': ofRecord,
  'staff.prescriptions.propose': ofRecord,
  'staff.prescriptions.saveProgramme': ofRecord,
  'staff.prescriptions.sign': ofRecord,
  'staff.preVisits.confirm': ofRecord,
  'staff.preVisits.get': ofRecord,
  'staff.recordFile.list': ofRecord,
  'staff.recordFile.make': freshOnRecord,
  'staff.review.confirmEntry': ofRecord,
  'staff.review.setBaseline': ofRecord,
  'staff.review.get': ofRecord,
  'staff.review.respond': ofRecord,
  'staff.review.write': ofRecord,
  'staff.screening.clear': freshOnRecord,
  'staff.screening.list': ofRecord,
  'staff.screening.outcomes': ofRecord,
  'staff.screening.record': ofRecord,
  'staff.screening.sheet': ofRecord,
  'staff.team.get': ofRecord,
  'staff.team.open': ofName,
  'staff.team.emergencyAccesses': ofClinic,
  'staff.team.set': ofRecord,
  'staff.team.setSite': ofRecord,
  'staff.templates.list': ofClinic,
  'staff.visits.begin': ofRecord,
  'staff.visits.checkHome': ofRecord,
  'staff.visits.firstVisit': ofRecord,
  'staff.visits.homeEligibility': ofRecord,
  'staff.visits.saveFirstVisit': ofRecord,
  'staff.visits.list': ofRecord,
  'staff.visits.watch': ofRecord,
  'staff.worklist.acknowledge': ofRecord,
  'staff.worklist.assign': ofRecord,
  'staff.worklist.filters': ofClinic,
  'staff.worklist.list': ofClinic,
  'staff.worklist.snooze': ofRecord,
  'staff.worklist.take': ofRecord,
};
