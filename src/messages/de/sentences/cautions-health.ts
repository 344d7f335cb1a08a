/** What to mind after an answer about health, and with a medicine. */
import type { MedicineCautionId } from '#core/prescribing/cautions/ids.ts';
import type { ScreeningItemId } from '#core/screening/items.ts';

export const screeningCautions = {
  'screening-told-to-hold-off':
    'Ihr Arzt oder Ihre Ärztin hat Sie gebeten, nicht zu trainieren. Warten Sie, bis ein Arzt oder eine Ärztin es erlaubt.',
  'screening-new-chest-faint-or-breath':
    'Kommen Beschwerden in der Brust, Schwäche wie vor einer Ohnmacht oder Atemnot wieder: Hören Sie auf und wählen Sie den Notruf.',
  'screening-heart-condition':
    'Pressen Sie nicht und halten Sie nicht die Luft an. Rufen Sie uns an, wenn Sie schlechter Luft bekommen oder die Beine anschwellen.',
  'screening-heart-event':
    'Pressen Sie nicht und halten Sie nicht die Luft an. Wird die Brust eng oder bekommen Sie keine Luft: Hören Sie auf und wählen Sie den Notruf.',
  'screening-aneurysm-dissection-or-marfan':
    'Pressen Sie nicht und halten Sie nicht die Luft an. Plötzlicher starker Schmerz in Brust, Rücken, Bauch oder Kopf: Wählen Sie den Notruf.',
  'screening-stroke-or-tia':
    'Hängt das Gesicht auf einer Seite, verändert sich das Sprechen oder wird eine Seite schwach: Wählen Sie sofort den Notruf.',
  'screening-high-blood-pressure':
    'Messen Sie vor dem Beginn den Blutdruck. Ist er hoch, beginnen Sie nicht und rufen Sie uns an.',
  'blood-pressure-numbers':
    'Messen Sie vor dem Beginn den Blutdruck. Ab {systolic} zu {diastolic} rufen Sie uns zuerst an. Ab {stopsystolic} zu {stopdiastolic} trainieren Sie nicht. Es reicht, wenn einer der beiden Werte so hoch ist.',
  'screening-fever-or-unwell': 'Trainieren Sie nicht, solange Sie Fieber haben oder sich krank fühlen.',
  'screening-head-pressure-or-eye':
    'Pressen Sie nicht und halten Sie den Kopf oben. Hören Sie auf, wenn sich das Sehen verändert oder der Kopf stark schmerzt.',
  'screening-past-clot':
    'Eine geschwollene oder schmerzende Wade oder plötzliche Atemnot ist dringend: Hören Sie auf und holen Sie Hilfe.',
  'screening-clotting-or-bleeding-disorder':
    'Großer Bluterguss, geschwollenes Gelenk, geschwollener Arm oder geschwollenes Bein: Rufen Sie uns noch am selben Tag an.',
  'screening-antiphospholipid-antibodies':
    'Legen Sie keine Manschette und kein enges Band an Arme oder Beine.',
  'screening-sickle-cell':
    'Trinken Sie genug und ruhen Sie sich zwischen den Sätzen gut aus. Hören Sie auf, wenn Arm, Bein oder Brust schmerzen.',
  'screening-arterial-disease':
    'Machen Sie Pause, wenn Arm oder Bein krampft. Ist der Arm oder das Bein kalt, blasser als auf der anderen Seite oder schmerzt in Ruhe, ist das dringend: Holen Sie Hilfe.',
  'screening-dialysis-access': 'Legen Sie nichts Enges an den Arm oder das Bein mit Ihrem Shunt oder Port.',
  'screening-lymph':
    'Legen Sie keine Manschette an diesen Arm oder dieses Bein. Sagen Sie es uns, wenn es sich schwerer anfühlt oder anschwillt.',
  'screening-veins': 'Hören Sie auf und rufen Sie uns an, wenn eine Vene rot oder warm wird oder schmerzt.',
  'screening-swollen-calf': 'Trainieren Sie nicht. Holen Sie heute ärztliche Hilfe für die Wade.',
  'screening-raynaud-or-systemic-sclerosis':
    'Halten Sie Hände und Füße warm. Hören Sie auf, wenn die Nägel blass, grau oder bläulich werden.',
  'screening-vasculitis':
    'Rufen Sie uns an bei neuen Flecken auf der Haut, neuem Schmerz oder neuer Taubheit in Arm oder Bein.',
  'screening-after-covid':
    'Rufen Sie uns noch am selben Tag an, wenn eine Wade schmerzt oder anschwillt. Rufen Sie Hilfe, wenn Sie keine Luft bekommen.',
  'screening-pregnancy-or-birth':
    'Bei Blutung, Schwindel oder Krämpfen: Hören Sie auf und rufen Sie Ihre Hebamme oder Frauenarztpraxis an.',
  'screening-operation-plaster-or-bed':
    'Halten Sie sich an das, was nach der Operation ärztlich erlaubt wurde. Rufen Sie uns noch am selben Tag an, wenn eine Wade schmerzt oder anschwillt.',
  'screening-cancer':
    'Hören Sie auf und rufen Sie uns an, wenn ein Knochen neu schmerzt. Halten Sie sich an das, was das Team Ihrer Krebsbehandlung erlaubt.',
  'screening-diabetes':
    'Sehen Sie nach dem Training Ihre Füße an und sagen Sie uns, wenn eine Stelle wund ist.',
  'screening-kidney-disease':
    'Dunkler Urin oder sehr starker Muskelschmerz ist dringend: Rufen Sie uns noch am selben Tag an.',
  'screening-no-feeling-or-cannot-say':
    'Machen Sie das mit jemandem an Ihrer Seite, der auf Ihre Haut und ihre Farbe achtet.',
  'screening-medicines':
    'Sagen Sie uns, wenn sich an Ihren Medikamenten etwas ändert. Setzen Sie keines von sich aus ab.',
  'screening-arthritis-medicines':
    'Sagen Sie uns, wenn sich an Ihren Medikamenten etwas ändert. Setzen Sie keines von sich aus ab.',
  'screening-weight-loss-or-eating':
    'Sprechen Sie mit Ihrer Physiotherapeutin oder Ihrem Physiotherapeuten über Gewicht und Essen. Wir geben Ihnen kein Ziel vor.',
  'screening-wound-break-or-infection':
    'Halten Sie Druck von der wunden Stelle fern. Rufen Sie uns noch am selben Tag an, wenn die Rötung größer wird oder Sie Fieber haben.',
  'screening-skin-or-joint-under-cuff':
    'Legen Sie dort keine Manschette an, bis wir die Stelle angesehen haben.',
  'screening-hot-joint': 'Belasten Sie das heiße Gelenk nicht. Lassen Sie es ärztlich ansehen.',
  'screening-artificial-joint-or-metalwork':
    'Halten Sie sich an das, was nach der Operation ärztlich erlaubt wurde. Rufen Sie uns noch am selben Tag an, wenn dieses Gelenk heiß wird oder anschwillt.',
  'screening-rhabdomyolysis-or-muscle-disease':
    'Dunkler Urin oder Muskeln, die viel stärker schmerzen als sonst oder schwach werden, sind dringend: Rufen Sie uns noch am selben Tag an.',
  'screening-rheumatoid-arthritis':
    'Machen Sie in einem Schub weniger und sagen Sie es uns. Rufen Sie uns noch am selben Tag an, wenn eine Wade schmerzt oder anschwillt.',
  'screening-neck-in-rheumatoid-arthritis':
    'Lassen Sie den Nacken locker. Kribbeln, ungeschickte Hände oder wacklige Beine sind dringend: Rufen Sie uns an.',
  'screening-osteoporosis':
    'Bewegen Sie sich aus der Hüfte und halten Sie den Rücken lang. Schmerzt der Rücken plötzlich: Hören Sie auf und rufen Sie uns an.',
} as const satisfies Readonly<Record<`screening-${ScreeningItemId}` | 'blood-pressure-numbers', string>>;

export const medicineCautions = {
  'medicine-not-said':
    'Wir wissen noch nicht, welche Medikamente Sie nehmen. Sagen Sie es uns. Bei Schwindel, neuen blauen Flecken, dunklem Urin oder einer geschwollenen Wade rufen Sie uns an.',
  'medicine-blood-thinner':
    'Sie nehmen einen Blutverdünner. Sagen Sie uns, wenn Sie neue blaue Flecken haben. Holen Sie nach einem Sturz oder einem Stoß gegen den Kopf noch am selben Tag Hilfe.',
  'medicine-hormone-pill-or-patch':
    'Ihr Hormonmittel kann Blutgerinnsel wahrscheinlicher machen. Rufen Sie uns noch am selben Tag an, wenn eine Wade schmerzt oder anschwillt.',
  'medicine-testosterone':
    'Ihr Hormonmittel kann Blutgerinnsel wahrscheinlicher machen. Steigern Sie die Last nur in kleinen Schritten.',
  'medicine-blood-pressure-tablet':
    'Ihre Tablette kann Sie nach einem Satz schwindlig machen. Setzen Sie sich, und stehen Sie langsam auf.',
  'medicine-insulin-or-sulfonylurea':
    'Sie nehmen Insulin oder eine Tablette, die den Zucker zu tief senken kann. Messen Sie ihn vor dem Beginn und legen Sie etwas Süßes neben sich.',
  'medicine-long-term-steroid':
    'Ihre Haut und Ihre Knochen können leichter verletzt werden. Polstern Sie Gurte und sehen Sie danach die Haut an.',
  'medicine-statin':
    'Sie nehmen ein Statin. Dunkler Urin oder Muskeln, die viel stärker schmerzen als sonst, sind dringend: Rufen Sie uns noch am selben Tag an.',
  'medicine-colchicine':
    'Sie nehmen Colchicin. Sagen Sie uns, wenn Ihre Muskeln schwach sind oder ohne Grund schmerzen.',
  'medicine-jak-inhibitor':
    'Rufen Sie uns noch am selben Tag an, wenn eine Wade schmerzt oder anschwillt oder Sie Fieber haben.',
  'medicine-biologic': 'Trainieren Sie nicht mit Fieber oder einer entzündeten Wunde. Rufen Sie uns an.',
  'medicine-recent-quinolone':
    'Keine ruckartigen Bewegungen. Schmerzt plötzlich eine Sehne, zum Beispiel die Achillessehne: Hören Sie auf und rufen Sie uns an.',
} as const satisfies Readonly<Record<MedicineCautionId, string>>;
