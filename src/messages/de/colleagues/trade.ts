/**
 * Terms of the trade in German, by their English ones in the core, for papers that go to colleagues. A term
 * left out fails its test. Medical German as it is written between practices; common practice, no source.
 */

const measures = {
  'Grip strength': 'Greifkraft',
  'Pinch strength': 'Pinch-Kraft',
  'Hand span': 'Handspanne',
  'Timed up and go': 'Timed-up-and-go-Test',
  'Isometric force': 'Isometrische Kraft',
  'Limb occlusion pressure': 'Verschlussdruck der Extremität',
  'Body fat': 'Körperfett',
  Weight: 'Gewicht',
  Height: 'Größe',
  '30-second chair stand': 'Aufstehen vom Stuhl in 30 Sekunden',
  'Repetitions to failure at a load': 'Wiederholungen bis zum Muskelversagen',
  'Joint counts for an activity index': 'Gelenkzählung für einen Aktivitätsindex',
  'Clinical disease activity index': 'Klinischer Aktivitätsindex (CDAI)',
  'Five times sit-to-stand': 'Fünfmal Aufstehen vom Stuhl',
  'Walk at usual pace': 'Gehen in üblichem Tempo',
  '40 m fast walk': 'Schnelles Gehen über 40 m',
  '6-minute walk': '6-Minuten-Gehtest',
  'Stairs up and down': 'Treppe hinauf und hinab',
  'Range of movement': 'Bewegungsumfang',
  Range: 'Bewegungsumfang',
  'Reported disease activity index': 'Mitgeteilter Aktivitätsindex',
  'Ratings of a joint': 'Angaben zu einem Gelenk',
  Ratings: 'Angaben (0 bis 10, 10 am schlechtesten)',
  'KOOS or HOOS short score': 'KOOS- oder HOOS-Kurzwert (100 am besten)',
  'Limb circumference': 'Umfang der Extremität',
  'Ankle-brachial pressures': 'Knöchel-Arm-Drücke',
  'Blood pressure': 'Blutdruck',
  'Activities chosen by the patient': 'Selbst gewählte Tätigkeiten',
  'Activity chosen by the patient': 'Selbst gewählte Tätigkeit',
  'Strength test': 'Krafttest',
  Girth: 'Umfang',
  Effusion: 'Erguss',
} as const;

const findings = {
  'Past or present deep-vein thrombosis or pulmonary embolism':
    'Tiefe Venenthrombose oder Lungenembolie, früher oder jetzt',
  'Clotting or bleeding disorder, own or family': 'Gerinnungsstörung, eigene oder in der Familie',
  'Antiphospholipid antibodies': 'Antiphospholipid-Antikörper',
  'Sickle-cell disease or trait': 'Sichelzellkrankheit oder -anlage',
  'Arterial disease, arterial surgery, or walking pain that eases with rest':
    'Arterielle Verschlusskrankheit, Gefäßoperation oder Schmerz beim Gehen, der in Ruhe nachlässt',
  'Dialysis access in a limb': 'Dialysezugang an Arm oder Bein',
  'Lymph nodes removed or irradiated, lymphoedema': 'Lymphknoten entfernt oder bestrahlt, Lymphödem',
  'Aching varicose veins or past phlebitis': 'Schmerzende Krampfadern oder frühere Venenentzündung',
  'One calf newly swollen, warm or tender': 'Eine Wade neu geschwollen, warm oder druckschmerzhaft',
  'Raynaud or systemic sclerosis': 'Raynaud-Syndrom oder systemische Sklerose',
  Vasculitis: 'Vaskulitis',
  'Clotting risk after COVID-19': 'Thromboserisiko nach COVID-19',
  'Pregnant, perhaps pregnant, or birth within 12 weeks':
    'Schwangerschaft, mögliche Schwangerschaft oder Geburt in den letzten 12 Wochen',
  'Operation, plaster or bed rest within 12 weeks': 'Operation, Gips oder Bettruhe in den letzten 12 Wochen',
  'Active cancer or treatment within six months':
    'Aktive Krebserkrankung oder -behandlung in den letzten sechs Monaten',
  'Diabetes, with its nerves, eyes and control': 'Diabetes, mit Nerven, Augen und Einstellung',
  'Kidney disease': 'Nierenerkrankung',
  'Loss of feeling, or unable to report symptoms':
    'Gefühlsverlust, oder Beschwerden können nicht mitgeteilt werden',
  'Medicines by class': 'Medikamente nach Gruppen',
  'JAK inhibitor, biologic or recent quinolone': 'JAK-Hemmer, Biologikum oder kürzlich Chinolon',
  'Unwanted weight loss or trouble with eating': 'Ungewollter Gewichtsverlust oder Probleme beim Essen',
  'Told by a doctor not to exercise': 'Ärztlich von Training abgeraten',
  'New or worsening chest discomfort, fainting or breathlessness':
    'Neue oder zunehmende Brustbeschwerden, Ohnmacht oder Atemnot',
  'Heart failure, rhythm or valve disease, implanted device':
    'Herzinsuffizienz, Rhythmus- oder Klappenerkrankung, implantiertes Gerät',
  'Heart attack, angina, stent or bypass': 'Herzinfarkt, Angina pectoris, Stent oder Bypass',
  'Aneurysm of the aorta or in the head, aortic dissection, Marfan syndrome':
    'Aneurysma der Aorta oder im Kopf, Aortendissektion, Marfan-Syndrom',
  'Stroke or transient ischaemic attack': 'Schlaganfall oder TIA',
  'Diagnosed high blood pressure, treated or not': 'Bekannter Bluthochdruck, behandelt oder nicht',
  'Fever, chest infection or acute illness': 'Fieber, Atemwegsinfekt oder akute Erkrankung',
  'Raised intracranial pressure, retinal detachment or recent eye surgery':
    'Erhöhter Hirndruck, Netzhautablösung oder kürzliche Augenoperation',
  'Wound, stitches, recent fracture, skin graft or infection of a limb':
    'Wunde, Naht, frischer Bruch, Hauttransplantat oder Infektion an Arm oder Bein',
  'Fragile or broken skin, or active joint inflammation under the cuff':
    'Empfindliche oder verletzte Haut oder aktive Gelenkentzündung unter der Manschette',
  'Acutely hot or swollen joint': 'Akut überwärmtes oder geschwollenes Gelenk',
  'Artificial joint, or metalwork in a bone': 'Gelenkersatz oder Metall im Knochen',
  'Previous rhabdomyolysis, or a muscle disease': 'Frühere Rhabdomyolyse oder Muskelerkrankung',
  'Rheumatoid or other inflammatory arthritis': 'Rheumatoide oder andere entzündliche Arthritis',
  'Neck involvement in rheumatoid arthritis': 'Beteiligung der Halswirbelsäule bei rheumatoider Arthritis',
  'Osteoporosis or fragility fracture': 'Osteoporose oder Fragilitätsfraktur',
} as const;

export const trade: Readonly<Record<string, string>> = { ...measures, ...findings };
