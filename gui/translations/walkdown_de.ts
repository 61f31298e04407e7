<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<TS version="2.1" language="de">
 <context>
  <name>Against</name>
  <message>
   <source>%1 is in the field</source>
   <translation>%1 ist im Feld</translation>
  </message>
  <message>
   <source>The tag of %1 is not back</source>
   <translation>Die Marke von %1 ist nicht zurück</translation>
  </message>
  <message>
   <source>Stage “%1” is not closed yet</source>
   <translation>Abschnitt „%1“ ist noch nicht geschlossen</translation>
  </message>
 </context>
 <context>
  <name>AnswerForm</name>
  <message>
   <source>Value in %1</source>
   <translation>Wert in %1</translation>
  </message>
  <message>
   <source>Value in %1 (%2)</source>
   <translation>Wert in %1 (%2)</translation>
  </message>
  <message>
   <source>What you heard or saw, in words</source>
   <translation>Was gehört oder gesehen wurde, in Worten</translation>
  </message>
  <message>
   <source>File: a photo or the permit itself</source>
   <translation>Datei: ein Foto oder die Genehmigung selbst</translation>
  </message>
  <message>
   <source>Choose the file …</source>
   <translation>Datei wählen …</translation>
  </message>
  <message>
   <source>Choose the file</source>
   <translation>Datei wählen</translation>
  </message>
  <message>
   <source>Mean over %1 min, in m/s</source>
   <translation>Mittel über %1 min, in m/s</translation>
  </message>
  <message>
   <source>Gust, the highest 3 s mean, in m/s</source>
   <translation>Böe, das höchste 3-s-Mittel, in m/s</translation>
  </message>
  <message>
   <source>Choose what was seen.</source>
   <translation>Wählen, was gesehen wurde.</translation>
  </message>
  <message>
   <source>Say what was seen.</source>
   <translation>Sagen, was gesehen wurde.</translation>
  </message>
  <message>
   <source>'%1' is not a number.</source>
   <translation>„%1“ ist keine Zahl.</translation>
  </message>
  <message>
   <source>Mean and gust are numbers in m/s.</source>
   <translation>Mittel und Böe sind Zahlen in m/s.</translation>
  </message>
  <message>
   <source>mean %1 m/s, gust %2 m/s</source>
   <translation>Mittel %1 m/s, Böe %2 m/s</translation>
  </message>
 </context>
 <context>
  <name>BandPlot</name>
  <message>
   <source>Expected band and readings</source>
   <translation>Erwartetes Band und Messwerte</translation>
  </message>
  <message>
   <source>expected, in ohm</source>
   <translation>erwartet, in Ohm</translation>
  </message>
 </context>
 <context>
  <name>ChecklistView</name>
  <message>
   <source>Checklist</source>
   <translation>Prüfliste</translation>
  </message>
  <message>
   <source>Timeline</source>
   <translation>Zeitplan</translation>
  </message>
 </context>
 <context>
  <name>EnrolDialog</name>
  <message>
   <source>Enrol</source>
   <translation>Eintragen</translation>
  </message>
  <message>
   <source>Enrol a person</source>
   <translation>Person eintragen</translation>
  </message>
  <message>
   <source>Name: somebody with a key here, or a new name</source>
   <translation>Name: jemand mit Schlüssel hier, oder ein neuer Name</translation>
  </message>
  <message>
   <source>Role</source>
   <translation>Rolle</translation>
  </message>
  <message>
   <source>Passphrase for a new key, at least 8 characters; empty where the person has a key</source>
   <translation>Kennsatz für einen neuen Schlüssel, mindestens 8 Zeichen; leer, wenn die Person einen hat</translation>
  </message>
  <message>
   <source>Cancel</source>
   <translation>Abbrechen</translation>
  </message>
  <message>
   <source>Name</source>
   <translation>Name</translation>
  </message>
  <message>
   <source>Passphrase for a new key</source>
   <translation>Kennsatz für einen neuen Schlüssel</translation>
  </message>
  <message>
   <source>Enrolled as entry %1.</source>
   <translation>Eingetragen als Eintrag %1.</translation>
  </message>
 </context>
 <context>
  <name>EntryModel</name>
  <message>
   <source>Entry</source>
   <translation>Eintrag</translation>
  </message>
  <message>
   <source>Time</source>
   <translation>Zeit</translation>
  </message>
  <message>
   <source>Kind</source>
   <translation>Art</translation>
  </message>
  <message>
   <source>What it says</source>
   <translation>Was er sagt</translation>
  </message>
 </context>
 <context>
  <name>Faults</name>
  <message>
   <source>fits now</source>
   <translation>passt jetzt</translation>
  </message>
  <message>
   <source>re-hooked</source>
   <translation>neu angeschlossen</translation>
  </message>
  <message>
   <source>Read these pins again.</source>
   <translation>Diese Stifte neu messen.</translation>
  </message>
  <message>
   <source>the whole field</source>
   <translation>das ganze Feld</translation>
  </message>
  <message>
   <source>%1 to P%2</source>
   <translation>%1 bis P%2</translation>
  </message>
  <message>
   <source>%1 and %2</source>
   <translation>%1 und %2</translation>
  </message>
  <message numerus="yes">
   <source>%1 and %n more</source>
   <translation>
    <numerusform>%1 und %n weiterer</numerusform>
    <numerusform>%1 und %n weitere</numerusform>
   </translation>
  </message>
 </context>
 <context>
  <name>FaultsView</name>
  <message>
   <source>where the crew was last</source>
   <translation>wo die Crew zuletzt war</translation>
  </message>
  <message>
   <source>The walk begins</source>
   <translation>Der Rundgang beginnt</translation>
  </message>
  <message>
   <source>Next to do</source>
   <translation>Nächster Fehler</translation>
  </message>
  <message>
   <source>Faults in walking order</source>
   <translation>Fehler in Gehreihenfolge</translation>
  </message>
  <message>
   <source>Print the walk sheet …</source>
   <translation>Gehblatt drucken …</translation>
  </message>
  <message>
   <source>Re-hooked: read again</source>
   <translation>Neu angeschlossen: neu messen</translation>
  </message>
  <message>
   <source>Show in the field</source>
   <translation>Im Feld zeigen</translation>
  </message>
  <message>
   <source>Nothing is found. That is never more than what the tester can show.</source>
   <translation>Nichts gefunden. Das ist nie mehr, als der Prüfer zeigen kann.</translation>
  </message>
  <message numerus="yes">
   <source>%n to do</source>
   <translation>
    <numerusform>%n zu tun</numerusform>
    <numerusform>%n zu tun</numerusform>
   </translation>
  </message>
  <message>
   <source>No fault is chosen</source>
   <translation>Kein Fehler gewählt</translation>
  </message>
  <message>
   <source>Confidence: %1 %</source>
   <translation>Gewissheit: %1 %</translation>
  </message>
  <message>
   <source>. Or else: %1</source>
   <translation>. Oder: %1</translation>
  </message>
 </context>
 <context>
  <name>FieldCanvas</name>
  <message>
   <source>The field, drawn</source>
   <translation>Das Feld, gezeichnet</translation>
  </message>
  <message>
   <source>%1: %2</source>
   <translation>%1: %2</translation>
  </message>
 </context>
 <context>
  <name>FieldView</name>
  <message>
   <source>Pin, as M01/R1/P05</source>
   <translation>Stift, wie M01/R1/P05</translation>
  </message>
  <message>
   <source>Go to a pin</source>
   <translation>Zu einem Stift gehen</translation>
  </message>
  <message>
   <source>Whole field</source>
   <translation>Ganzes Feld</translation>
  </message>
  <message>
   <source>Nearer</source>
   <translation>Näher</translation>
  </message>
  <message>
   <source>Farther</source>
   <translation>Ferner</translation>
  </message>
  <message>
   <source>There is no pin %1; a pin is written M01/R1/P05.</source>
   <translation>Es gibt keinen Pin %1; ein Pin schreibt sich M01/R1/P05.</translation>
  </message>
 </context>
 <context>
  <name>FilePage</name>
  <message>
   <source>Choose a file …</source>
   <translation>Datei wählen …</translation>
  </message>
  <message>
   <source>Choose a file</source>
   <translation>Datei wählen</translation>
  </message>
 </context>
 <context>
  <name>Item</name>
  <message>
   <source>somebody enters the field</source>
   <translation>jemand das Feld betritt</translation>
  </message>
  <message>
   <source>a pin is hooked up anew</source>
   <translation>ein Stift neu angeschlossen wird</translation>
  </message>
  <message>
   <source>a hold is called</source>
   <translation>ein Halt gerufen wird</translation>
  </message>
  <message>
   <source>the clock steps</source>
   <translation>die Uhr springt</translation>
  </message>
  <message>
   <source>the computer sleeps</source>
   <translation>der Rechner schläft</translation>
  </message>
  <message>
   <source>the computer starts anew</source>
   <translation>der Rechner neu startet</translation>
  </message>
  <message>
   <source>the show time moves</source>
   <translation>die Showzeit sich ändert</translation>
  </message>
  <message>
   <source>thunder is heard</source>
   <translation>Donner zu hören ist</translation>
  </message>
  <message>
   <source>a key changes hands</source>
   <translation>ein Schlüssel die Hand wechselt</translation>
  </message>
  <message>
   <source> or </source>
   <translation> oder </translation>
  </message>
  <message>
   <source>mean at most %1 m/s, gust at most %2 m/s</source>
   <translation>Mittel höchstens %1 m/s, Böe höchstens %2 m/s</translation>
  </message>
  <message>
   <source>%1 to %2</source>
   <translation>%1 bis %2</translation>
  </message>
  <message>
   <source>at least %1</source>
   <translation>mindestens %1</translation>
  </message>
  <message>
   <source>at most %1</source>
   <translation>höchstens %1</translation>
  </message>
  <message>
   <source>Answered by: %1</source>
   <translation>Beantwortet von: %1</translation>
  </message>
  <message>
   <source>Follows from the record; nobody answers it.</source>
   <translation>Folgt aus dem Protokoll; niemand beantwortet es.</translation>
  </message>
  <message>
   <source>Second signature: %1</source>
   <translation>Zweite Unterschrift: %1</translation>
  </message>
  <message>
   <source>Holds for: %1</source>
   <translation>Hält bei: %1</translation>
  </message>
  <message>
   <source>Valid for: %1</source>
   <translation>Gültig für: %1</translation>
  </message>
  <message>
   <source>Needs first: %1</source>
   <translation>Braucht zuerst: %1</translation>
  </message>
  <message>
   <source>Broken when: %1</source>
   <translation>Bricht, wenn: %1</translation>
  </message>
  <message>
   <source>Source: %1</source>
   <translation>Quelle: %1</translation>
  </message>
 </context>
 <context>
  <name>ItemDelegate</name>
  <message>
   <source> – ends first</source>
   <translation> – endet zuerst</translation>
  </message>
 </context>
 <context>
  <name>ItemModel</name>
  <message>
   <source>not open yet</source>
   <translation>noch nicht offen</translation>
  </message>
  <message>
   <source>closed by %1</source>
   <translation>geschlossen von %1</translation>
  </message>
  <message>
   <source>open</source>
   <translation>offen</translation>
  </message>
  <message>
   <source>Release</source>
   <translation>Freigabe</translation>
  </message>
  <message>
   <source>%1 left</source>
   <translation>noch %1</translation>
  </message>
  <message>
   <source>wait %1</source>
   <translation>warten %1</translation>
  </message>
 </context>
 <context>
  <name>ItemPage</name>
  <message>
   <source>Sign this answer</source>
   <translation>Antwort unterschreiben</translation>
  </message>
  <message>
   <source>Second signature</source>
   <translation>Zweite Unterschrift</translation>
  </message>
  <message>
   <source>Waive …</source>
   <translation>Absehen …</translation>
  </message>
  <message>
   <source>Close this stage</source>
   <translation>Abschnitt schließen</translation>
  </message>
  <message>
   <source>The pause at the end of a stage is closed by: %1. Every item of the stage must hold.</source>
   <translation>Die Pause am Ende eines Abschnitts schließt: %1. Jeder Punkt des Abschnitts muss halten.</translation>
  </message>
  <message>
   <source>Not open yet: the stage before it is not closed.</source>
   <translation>Noch nicht offen: der Abschnitt davor ist nicht geschlossen.</translation>
  </message>
  <message>
   <source>Closed by %1.</source>
   <translation>Geschlossen von %1.</translation>
  </message>
  <message>
   <source>Open.</source>
   <translation>Offen.</translation>
  </message>
  <message>
   <source>Answer: %1, by %2</source>
   <translation>Antwort: %1, von %2</translation>
  </message>
  <message>
   <source>, confirmed by %1</source>
   <translation>, bestätigt von %1</translation>
  </message>
  <message>
   <source>. Given under a second after the question.</source>
   <translation>. Gegeben unter einer Sekunde nach der Frage.</translation>
  </message>
  <message>
   <source>Waive this item</source>
   <translation>Von diesem Punkt absehen</translation>
  </message>
  <message>
   <source>This covers only the failure as it stands now: %1</source>
   <translation>Das deckt nur den Mangel, wie er jetzt ist: %1</translation>
  </message>
  <message>
   <source>Reason</source>
   <translation>Grund</translation>
  </message>
 </context>
 <context>
  <name>KeysPage</name>
  <message>
   <source>Keys</source>
   <translation>Schlüssel</translation>
  </message>
  <message>
   <source>A hand-over is signed by both, the receiver first. Until the giver has signed too, the giver holds the key.</source>
   <translation>Eine Übergabe unterschreiben beide, zuerst wer empfängt. Bis auch wer gibt unterschrieben hat, hält er den Schlüssel.</translation>
  </message>
  <message>
   <source>The checklist has no key.</source>
   <translation>Die Prüfliste hat keinen Schlüssel.</translation>
  </message>
  <message>
   <source>In the hands of %1</source>
   <translation>In den Händen von %1</translation>
  </message>
  <message>
   <source>In its place: %1</source>
   <translation>An seinem Platz: %1</translation>
  </message>
  <message>
   <source>%1 has signed for it; %2 still holds it.</source>
   <translation>%1 hat dafür unterschrieben; noch hält ihn %2.</translation>
  </message>
  <message>
   <source>Take it …</source>
   <translation>Nehmen …</translation>
  </message>
  <message>
   <source>Take the key</source>
   <translation>Schlüssel nehmen</translation>
  </message>
  <message>
   <source>I take the %1.</source>
   <translation>Ich nehme: %1.</translation>
  </message>
  <message>
   <source>Receive it …</source>
   <translation>Empfangen …</translation>
  </message>
  <message>
   <source>Receive the key</source>
   <translation>Schlüssel empfangen</translation>
  </message>
  <message>
   <source>I receive the %1 from %2.</source>
   <translation>Ich empfange: %1, von %2.</translation>
  </message>
  <message>
   <source>Give it to %1 …</source>
   <translation>An %1 geben …</translation>
  </message>
  <message>
   <source>Give the key</source>
   <translation>Schlüssel geben</translation>
  </message>
  <message>
   <source>I give the %1 to %2.</source>
   <translation>Ich gebe: %1, an %2.</translation>
  </message>
  <message>
   <source>Put it: %1 …</source>
   <translation>Ablegen: %1 …</translation>
  </message>
  <message>
   <source>Put the key down</source>
   <translation>Schlüssel ablegen</translation>
  </message>
  <message>
   <source>I put the %1 here: %2.</source>
   <translation>Ich lege ab: %1, hier: %2.</translation>
  </message>
 </context>
 <context>
  <name>LearnDialog</name>
  <message>
   <source>Save as a profile …</source>
   <translation>Als Profil sichern …</translation>
  </message>
  <message>
   <source>Learn a format</source>
   <translation>Format lernen</translation>
  </message>
  <message>
   <source>Lines of the tester: paste a few</source>
   <translation>Zeilen des Prüfers: einige einfügen</translation>
  </message>
  <message>
   <source>Choose a part of the first line, then press what it is</source>
   <translation>Teil der ersten Zeile wählen, dann drücken, was er ist</translation>
  </message>
  <message>
   <source>What every line becomes</source>
   <translation>Was aus jeder Zeile wird</translation>
  </message>
  <message>
   <source>Close</source>
   <translation>Schließen</translation>
  </message>
  <message>
   <source>Lines of the tester</source>
   <translation>Zeilen des Prüfers</translation>
  </message>
  <message>
   <source>Pattern: %1</source>
   <translation>Muster: %1</translation>
  </message>
  <message>
   <source>taken: </source>
   <translation>genommen: </translation>
  </message>
  <message>
   <source>NOT taken: </source>
   <translation>NICHT genommen: </translation>
  </message>
  <message>
   <source>Save as a profile</source>
   <translation>Als Profil sichern</translation>
  </message>
 </context>
 <context>
  <name>Legend</name>
  <message>
   <source>Verdicts and how many pins have each</source>
   <translation>Urteile und wie viele Stifte jedes haben</translation>
  </message>
 </context>
 <context>
  <name>LookDialog</name>
  <message>
   <source>Light and text</source>
   <translation>Licht und Schrift</translation>
  </message>
  <message>
   <source>Light</source>
   <translation>Licht</translation>
  </message>
  <message>
   <source>Day</source>
   <translation>Tag</translation>
  </message>
  <message>
   <source>Dusk</source>
   <translation>Dämmerung</translation>
  </message>
  <message>
   <source>Night: red on black</source>
   <translation>Nacht: Rot auf Schwarz</translation>
  </message>
  <message>
   <source>Size of text</source>
   <translation>Schriftgröße</translation>
  </message>
  <message>
   <source>%1 %</source>
   <translation>%1 %</translation>
  </message>
  <message>
   <source>Close</source>
   <translation>Schließen</translation>
  </message>
 </context>
 <context>
  <name>Navigation</name>
  <message>
   <source>Views</source>
   <translation>Ansichten</translation>
  </message>
 </context>
 <context>
  <name>NewShowDialog</name>
  <message>
   <source>Back</source>
   <translation>Zurück</translation>
  </message>
  <message>
   <source>Open the new record</source>
   <translation>Neues Protokoll öffnen</translation>
  </message>
  <message>
   <source>New show</source>
   <translation>Neue Show</translation>
  </message>
  <message>
   <source>Cancel</source>
   <translation>Abbrechen</translation>
  </message>
  <message>
   <source>The record</source>
   <translation>Das Protokoll</translation>
  </message>
  <message>
   <source>A new file, on this computer. Everything of the day is kept in it. The crew is enrolled once it is open.</source>
   <translation>Eine neue Datei auf diesem Rechner. Alles vom Tag wird darin gehalten. Die Mannschaft wird eingetragen, sobald es offen ist.</translation>
  </message>
  <message>
   <source>The record's file</source>
   <translation>Datei des Protokolls</translation>
  </message>
  <message>
   <source>Choose where …</source>
   <translation>Ort wählen …</translation>
  </message>
  <message>
   <source>Step %1 of %2</source>
   <translation>Schritt %1 von %2</translation>
  </message>
  <message>
   <source>What must be mended first:</source>
   <translation>Was zuerst behoben werden muss:</translation>
  </message>
  <message>
   <source>Worth a look:</source>
   <translation>Einen Blick wert:</translation>
  </message>
  <message>
   <source>Next</source>
   <translation>Weiter</translation>
  </message>
 </context>
 <context>
  <name>Paper</name>
  <message>
   <source>Given to the printer.</source>
   <translation>An den Drucker gegeben.</translation>
  </message>
  <message>
   <source>The printer did not take it: look at it and at its queue.</source>
   <translation>Der Drucker nahm es nicht an: ihn und seine Warteschlange ansehen.</translation>
  </message>
 </context>
 <context>
  <name>PeoplePage</name>
  <message>
   <source>People and tags</source>
   <translation>Personen und Marken</translation>
  </message>
  <message>
   <source>Enrol a person …</source>
   <translation>Person eintragen …</translation>
  </message>
  <message>
   <source>Where somebody goes</source>
   <translation>Wohin jemand geht</translation>
  </message>
  <message>
   <source>anywhere in the field</source>
   <translation>irgendwo im Feld</translation>
  </message>
  <message>
   <source>Nobody is enrolled yet.</source>
   <translation>Noch niemand ist eingetragen.</translation>
  </message>
  <message>
   <source>IN THE FIELD</source>
   <translation>IM FELD</translation>
  </message>
  <message>
   <source>outside</source>
   <translation>draußen</translation>
  </message>
  <message>
   <source>tag out</source>
   <translation>Marke hängt</translation>
  </message>
  <message>
   <source>Comes out …</source>
   <translation>Kommt heraus …</translation>
  </message>
  <message>
   <source>%1 comes out of the field</source>
   <translation>%1 kommt aus dem Feld</translation>
  </message>
  <message>
   <source>Told by another …</source>
   <translation>Von anderen gemeldet …</translation>
  </message>
  <message>
   <source>Another person says that %1 is out</source>
   <translation>Eine andere Person sagt, dass %1 draußen ist</translation>
  </message>
  <message>
   <source>Goes in</source>
   <translation>Geht hinein</translation>
  </message>
  <message>
   <source>%1 goes into the field</source>
   <translation>%1 geht ins Feld</translation>
  </message>
  <message>
   <source>Tag back …</source>
   <translation>Marke zurück …</translation>
  </message>
  <message>
   <source>%1 takes the tag back</source>
   <translation>%1 nimmt die Marke zurück</translation>
  </message>
  <message>
   <source>Tag, told by another …</source>
   <translation>Marke, von anderen gemeldet …</translation>
  </message>
  <message>
   <source>Hangs a tag</source>
   <translation>Hängt eine Marke</translation>
  </message>
  <message>
   <source>%1 hangs a tag</source>
   <translation>%1 hängt eine Marke</translation>
  </message>
  <message>
   <source>Out of the field</source>
   <translation>Aus dem Feld</translation>
  </message>
  <message>
   <source>%1 is out of the field.</source>
   <translation>%1 ist aus dem Feld.</translation>
  </message>
  <message>
   <source>Reason</source>
   <translation>Grund</translation>
  </message>
  <message>
   <source>Tag back</source>
   <translation>Marke zurück</translation>
  </message>
  <message>
   <source>The tag of %1 is back.</source>
   <translation>Die Marke von %1 ist zurück.</translation>
  </message>
  <message>
   <source>Where the next person goes in; the pins there count as unread from then on</source>
   <translation>Wohin die nächste Person geht; die Pins dort gelten von da an als ungelesen</translation>
  </message>
 </context>
 <context>
  <name>PinPage</name>
  <message>
   <source>Current, by the planned loop at its worst</source>
   <translation>Strom, nach der geplanten Schleife im schlechtesten Fall</translation>
  </message>
  <message>
   <source>Current, by the measured loop</source>
   <translation>Strom, nach der gemessenen Schleife</translation>
  </message>
  <message>
   <source>Choose a pin: by pointer, or with the arrow keys. N goes to the next that does not fit.</source>
   <translation>Stift wählen: mit dem Zeiger oder den Pfeiltasten. N geht zum nächsten, der nicht passt.</translation>
  </message>
  <message>
   <source>free: nothing is planned here</source>
   <translation>frei: hier ist nichts geplant</translation>
  </message>
  <message>
   <source>, %1 ohm</source>
   <translation>, %1 Ohm</translation>
  </message>
  <message numerus="yes">
   <source>%n igniter(s)</source>
   <translation>
    <numerusform>%n Zünder</numerusform>
    <numerusform>%n Zünder</numerusform>
   </translation>
  </message>
  <message>
   <source>, in series</source>
   <translation>, in Reihe</translation>
  </message>
  <message>
   <source>, in parallel</source>
   <translation>, parallel</translation>
  </message>
  <message>
   <source>, lead %1 m</source>
   <translation>, Leitung %1 m</translation>
  </message>
  <message>
   <source>Cue %1, %2</source>
   <translation>Cue %1, %2</translation>
  </message>
  <message>
   <source>%1 (%2 %)</source>
   <translation>%1 (%2 %)</translation>
  </message>
  <message>
   <source>Or else: %1 (%2 %)</source>
   <translation>Oder: %1 (%2 %)</translation>
  </message>
  <message>
   <source>Re-hooked</source>
   <translation>Neu angeschlossen</translation>
  </message>
  <message numerus="yes">
   <source>%n pin(s) read alike: a swap among them cannot be seen by the tester.</source>
   <translation>
    <numerusform>%n Stift liest gleich: eine Vertauschung kann der Prüfer nicht sehen.</numerusform>
    <numerusform>%n Stifte lesen gleich: eine Vertauschung unter ihnen kann der Prüfer nicht sehen.</numerusform>
   </translation>
  </message>
  <message>
   <source>Show the pins that read alike</source>
   <translation>Gleich lesende Stifte zeigen</translation>
  </message>
  <message>
   <source>%1 ohm</source>
   <translation>%1 Ohm</translation>
  </message>
  <message>
   <source>above range</source>
   <translation>über dem Bereich</translation>
  </message>
  <message>
   <source> (before the re-hook)</source>
   <translation> (vor dem neuen Anschluss)</translation>
  </message>
  <message>
   <source>History, the newest first</source>
   <translation>Verlauf, das Neueste zuerst</translation>
  </message>
  <message>
   <source>and %1 more: see the record</source>
   <translation>und %1 mehr: siehe Protokoll</translation>
  </message>
 </context>
 <context>
  <name>QrCode</name>
  <message>
   <source>QR code of the mark %1</source>
   <translation>QR-Code des Kennzeichens %1</translation>
  </message>
 </context>
 <context>
  <name>RecordView</name>
  <message>
   <source>Readings too</source>
   <translation>Auch Messwerte</translation>
  </message>
  <message>
   <source>Verify now</source>
   <translation>Jetzt prüfen</translation>
  </message>
  <message>
   <source>Find in the entries</source>
   <translation>In den Einträgen suchen</translation>
  </message>
  <message>
   <source>Entries of the record</source>
   <translation>Einträge des Protokolls</translation>
  </message>
  <message>
   <source>Mark of the record now: write it on the permit</source>
   <translation>Kennzeichen des Protokolls jetzt: auf die Genehmigung schreiben</translation>
  </message>
  <message>
   <source>The entry, as it stands on disk</source>
   <translation>Der Eintrag, wie er auf der Platte steht</translation>
  </message>
  <message>
   <source>Not verified since it was opened.</source>
   <translation>Seit dem Öffnen nicht geprüft.</translation>
  </message>
  <message>
   <source>Reading the whole record …</source>
   <translation>Lese das ganze Protokoll …</translation>
  </message>
  <message>
   <source>At %1 all %2 entries held; the mark was %3.</source>
   <translation>Um %1 hielten alle %2 Einträge; das Kennzeichen war %3.</translation>
  </message>
  <message>
   <source>DOES NOT HOLD, line %1: %2</source>
   <translation>HÄLT NICHT, Zeile %1: %2</translation>
  </message>
 </context>
 <context>
  <name>ReleasePage</name>
  <message>
   <source>Release</source>
   <translation>Freigabe</translation>
  </message>
  <message>
   <source>Show time, by the clock of this place</source>
   <translation>Showzeit, nach der Uhr dieses Ortes</translation>
  </message>
  <message>
   <source>Show time</source>
   <translation>Showzeit</translation>
  </message>
  <message>
   <source>Set the show time …</source>
   <translation>Showzeit setzen …</translation>
  </message>
  <message>
   <source>Set the show time</source>
   <translation>Showzeit setzen</translation>
  </message>
  <message>
   <source>The show begins at %1.</source>
   <translation>Die Show beginnt um %1.</translation>
  </message>
  <message>
   <source>Lift the hold …</source>
   <translation>Halt aufheben …</translation>
  </message>
  <message>
   <source>Withdraw the release: anyone, at once</source>
   <translation>Freigabe zurückziehen: jeder, sofort</translation>
  </message>
  <message>
   <source>The last release fell: %1</source>
   <translation>Die letzte Freigabe fiel: %1</translation>
  </message>
  <message>
   <source>Sign the release …</source>
   <translation>Freigabe unterschreiben …</translation>
  </message>
  <message>
   <source>Waiting for a second signature</source>
   <translation>Wartet auf eine zweite Unterschrift</translation>
  </message>
  <message>
   <source>%1, by %2</source>
   <translation>%1, von %2</translation>
  </message>
  <message>
   <source>Second signature to entry %1 …</source>
   <translation>Zweite Unterschrift zu Eintrag %1 …</translation>
  </message>
  <message>
   <source>Second signature</source>
   <translation>Zweite Unterschrift</translation>
  </message>
  <message>
   <source>Sign the release</source>
   <translation>Freigabe unterschreiben</translation>
  </message>
  <message>
   <source>Every item holds at this moment, the field is clear, and the release falls by itself when anything under it falls.</source>
   <translation>Jeder Punkt hält in diesem Moment, das Feld ist leer, und die Freigabe fällt von selbst, wenn etwas darunter fällt.</translation>
  </message>
  <message>
   <source>Lift the hold</source>
   <translation>Halt aufheben</translation>
  </message>
  <message>
   <source>What the hold broke is to be answered anew.</source>
   <translation>Was der Halt gebrochen hat, ist neu zu beantworten.</translation>
  </message>
  <message>
   <source>Reason</source>
   <translation>Grund</translation>
  </message>
  <message>
   <source>Timeline</source>
   <translation>Zeitleiste</translation>
  </message>
 </context>
 <context>
  <name>ReportView</name>
  <message>
   <source>The report is made from the record alone, which is verified on the way.</source>
   <translation>Der Bericht entsteht allein aus dem Protokoll, das dabei geprüft wird.</translation>
  </message>
  <message>
   <source>Make the report</source>
   <translation>Bericht erstellen</translation>
  </message>
  <message>
   <source>Save as PDF …</source>
   <translation>Als PDF sichern …</translation>
  </message>
  <message>
   <source>Save as HTML …</source>
   <translation>Als HTML sichern …</translation>
  </message>
  <message>
   <source>Print …</source>
   <translation>Drucken …</translation>
  </message>
  <message>
   <source>The report</source>
   <translation>Der Bericht</translation>
  </message>
  <message>
   <source>Reading the whole record …</source>
   <translation>Lese das ganze Protokoll …</translation>
  </message>
  <message>
   <source>Save as PDF</source>
   <translation>Als PDF sichern</translation>
  </message>
  <message>
   <source>Saved: %1</source>
   <translation>Gesichert: %1</translation>
  </message>
  <message>
   <source>Save as HTML</source>
   <translation>Als HTML sichern</translation>
  </message>
  <message>
   <source>As it stood at %1; printed it is black on white.</source>
   <translation>Stand %1; gedruckt ist er schwarz auf weiß.</translation>
  </message>
 </context>
 <context>
  <name>SampleLine</name>
  <message>
   <source>Sample line: choose a part of it</source>
   <translation>Musterzeile: einen Teil wählen</translation>
  </message>
  <message>
   <source>The chosen part is: %1</source>
   <translation>Der gewählte Teil ist: %1</translation>
  </message>
  <message>
   <source>Begin anew</source>
   <translation>Neu beginnen</translation>
  </message>
  <message>
   <source>Nothing is marked yet.</source>
   <translation>Noch ist nichts markiert.</translation>
  </message>
  <message>
   <source>Module</source>
   <translation>Modul</translation>
  </message>
  <message>
   <source>Rail</source>
   <translation>Schiene</translation>
  </message>
  <message>
   <source>Pin</source>
   <translation>Stift</translation>
  </message>
  <message>
   <source>Value</source>
   <translation>Wert</translation>
  </message>
  <message>
   <source>Unit</source>
   <translation>Einheit</translation>
  </message>
  <message>
   <source>Line number</source>
   <translation>Zeilennummer</translation>
  </message>
 </context>
 <context>
  <name>Session</name>
  <message>
   <source>Written as entry %1.</source>
   <translation>Geschrieben als Eintrag %1.</translation>
  </message>
 </context>
 <context>
  <name>Sheet</name>
  <message>
   <source>From %1, about %2 m in straight lines.</source>
   <translation>Ab %1, etwa %2 m in geraden Linien.</translation>
  </message>
  <message>
   <source>Walk sheet</source>
   <translation>Gehblatt</translation>
  </message>
  <message>
   <source>Made %1, record %2. Clear the danger area before a reading.</source>
   <translation>Erstellt %1, Protokoll %2. Vor einer Messung den Gefahrenbereich räumen.</translation>
  </message>
 </context>
 <context>
  <name>SignDialog</name>
  <message>
   <source>Sign</source>
   <translation>Unterschreiben</translation>
  </message>
  <message>
   <source>Who signs</source>
   <translation>Wer unterschreibt</translation>
  </message>
  <message>
   <source>Passphrase of that person's key</source>
   <translation>Kennsatz des Schlüssels dieser Person</translation>
  </message>
  <message>
   <source>Cancel</source>
   <translation>Abbrechen</translation>
  </message>
  <message>
   <source>Passphrase</source>
   <translation>Kennsatz</translation>
  </message>
  <message>
   <source>Nobody who may sign this is enrolled with a key on this computer.</source>
   <translation>Niemand, der das unterschreiben darf, ist mit einem Schlüssel auf diesem Rechner eingetragen.</translation>
  </message>
  <message>
   <source>A reason is needed.</source>
   <translation>Ein Grund ist nötig.</translation>
  </message>
  <message>
   <source>Opening the key …</source>
   <translation>Öffne den Schlüssel …</translation>
  </message>
  <message>
   <source>Signed and written as entry %1.</source>
   <translation>Unterschrieben und geschrieben als Eintrag %1.</translation>
  </message>
 </context>
 <context>
  <name>StandingLine</name>
  <message>
   <source>NOT WRITTEN: %1</source>
   <translation>NICHT GESCHRIEBEN: %1</translation>
  </message>
  <message>
   <source>The release fell: %1</source>
   <translation>Die Freigabe fiel: %1</translation>
  </message>
  <message>
   <source>No release yet: %1</source>
   <translation>Noch keine Freigabe: %1</translation>
  </message>
  <message>
   <source>What stands</source>
   <translation>Was ansteht</translation>
  </message>
 </context>
 <context>
  <name>StartPage</name>
  <message>
   <source>Reads and records the show day. It never fires, arms or transmits.</source>
   <translation>Liest und protokolliert den Showtag. Es zündet, schärft und sendet nie.</translation>
  </message>
  <message>
   <source>Open a record …</source>
   <translation>Protokoll öffnen …</translation>
  </message>
  <message>
   <source>New show …</source>
   <translation>Neue Show …</translation>
  </message>
  <message>
   <source>Go on with the last record</source>
   <translation>Mit dem letzten Protokoll weitermachen</translation>
  </message>
 </context>
 <context>
  <name>Strip</name>
  <message>
   <source>Call a hold</source>
   <translation>Halt rufen</translation>
  </message>
  <message>
   <source>Call a hold: anyone, at once</source>
   <translation>Halt rufen: jeder, sofort</translation>
  </message>
  <message>
   <source>Time to show</source>
   <translation>Bis zur Show</translation>
  </message>
  <message>
   <source>The day</source>
   <translation>Der Tag</translation>
  </message>
  <message>
   <source>Release</source>
   <translation>Freigabe</translation>
  </message>
  <message>
   <source>Arming key</source>
   <translation>Scharfschlüssel</translation>
  </message>
  <message>
   <source>In the field</source>
   <translation>Im Feld</translation>
  </message>
  <message>
   <source>Wind</source>
   <translation>Wind</translation>
  </message>
  <message>
   <source>Tester</source>
   <translation>Prüfer</translation>
  </message>
  <message>
   <source>Last written</source>
   <translation>Zuletzt geschrieben</translation>
  </message>
  <message>
   <source>not set</source>
   <translation>nicht gesetzt</translation>
  </message>
  <message>
   <source>show at %1</source>
   <translation>Show um %1</translation>
  </message>
  <message>
   <source>%1 past</source>
   <translation>seit %1</translation>
  </message>
  <message>
   <source>hold by %1: %2</source>
   <translation>Halt von %1: %2</translation>
  </message>
  <message>
   <source>stands until something breaks it</source>
   <translation>steht, bis etwas sie bricht</translation>
  </message>
  <message>
   <source>stands until %1 (%2)</source>
   <translation>steht bis %1 (%2)</translation>
  </message>
  <message>
   <source>signed by %1 and %2</source>
   <translation>unterschrieben von %1 und %2</translation>
  </message>
  <message>
   <source>waits for the second signature</source>
   <translation>wartet auf die zweite Unterschrift</translation>
  </message>
  <message numerus="yes">
   <source>not possible: %n reason(s)</source>
   <translation>
    <numerusform>nicht möglich: %n Grund</numerusform>
    <numerusform>nicht möglich: %n Gründe</numerusform>
   </translation>
  </message>
  <message>
   <source>possible</source>
   <translation>möglich</translation>
  </message>
  <message>
   <source>possible, would stand until %1 (%2)</source>
   <translation>möglich, stünde bis %1 (%2)</translation>
  </message>
  <message>
   <source>offered to %1</source>
   <translation>angeboten an %1</translation>
  </message>
  <message>
   <source>no key in the checklist</source>
   <translation>kein Schlüssel in der Prüfliste</translation>
  </message>
  <message>
   <source>nobody</source>
   <translation>niemand</translation>
  </message>
  <message>
   <source>%1, gust %2 m/s</source>
   <translation>%1, Böe %2 m/s</translation>
  </message>
  <message>
   <source>not measured</source>
   <translation>nicht gemessen</translation>
  </message>
  <message>
   <source>by %1</source>
   <translation>von %1</translation>
  </message>
  <message>
   <source>no port chosen</source>
   <translation>kein Anschluss gewählt</translation>
  </message>
  <message>
   <source>quiet</source>
   <translation>still</translation>
  </message>
  <message>
   <source>reading</source>
   <translation>liest</translation>
  </message>
  <message>
   <source>unplugged</source>
   <translation>ausgesteckt</translation>
  </message>
  <message>
   <source>not open</source>
   <translation>nicht offen</translation>
  </message>
  <message>
   <source>NOT WRITTEN</source>
   <translation>NICHT GESCHRIEBEN</translation>
  </message>
  <message>
   <source>Views</source>
   <translation>Ansichten</translation>
  </message>
  <message>
   <source>Show in</source>
   <translation>Show in</translation>
  </message>
  <message>
   <source>Day</source>
   <translation>Tag</translation>
  </message>
  <message>
   <source>Key</source>
   <translation>Schlüssel</translation>
  </message>
  <message>
   <source>Field</source>
   <translation>Feld</translation>
  </message>
  <message>
   <source>Last</source>
   <translation>Zuletzt</translation>
  </message>
  <message>
   <source>%1, too short</source>
   <translation>%1, zu knapp</translation>
  </message>
  <message numerus="yes">
   <source>%n inside</source>
   <translation>
    <numerusform>%n darin</numerusform>
    <numerusform>%n darin</numerusform>
   </translation>
  </message>
  <message>
   <source>somebody</source>
   <translation>jemandem</translation>
  </message>
  <message>
   <source>hold by %1, no reason given</source>
   <translation>Halt von %1, ohne Angabe des Grundes</translation>
  </message>
 </context>
 <context>
  <name>TesterView</name>
  <message>
   <source>Lines as they came and what each became; all are on disk</source>
   <translation>Zeilen, wie sie kamen, und was aus jeder wurde; alle stehen auf der Platte</translation>
  </message>
  <message>
   <source>Lines of the tester</source>
   <translation>Zeilen des Prüfers</translation>
  </message>
  <message>
   <source>Port: found by name, none is opened before you press Listen</source>
   <translation>Anschluss: nach Namen gefunden, keiner wird geöffnet, bevor Zuhören gedrückt ist</translation>
  </message>
  <message>
   <source>Port</source>
   <translation>Anschluss</translation>
  </message>
  <message>
   <source>Listen</source>
   <translation>Zuhören</translation>
  </message>
  <message>
   <source>Stop</source>
   <translation>Aufhören</translation>
  </message>
  <message>
   <source>Look for ports</source>
   <translation>Anschlüsse suchen</translation>
  </message>
  <message>
   <source>Learn a format …</source>
   <translation>Format lernen …</translation>
  </message>
  <message>
   <source> above range</source>
   <translation> über dem Bereich</translation>
  </message>
  <message>
   <source> %1 ohm</source>
   <translation> %1 Ohm</translation>
  </message>
  <message>
   <source>not taken: %1</source>
   <translation>nicht genommen: %1</translation>
  </message>
 </context>
 <context>
  <name>Timeline</name>
  <message>
   <source>holds until something breaks it</source>
   <translation>hält, bis etwas es bricht</translation>
  </message>
  <message>
   <source>holds until %1 (%2)</source>
   <translation>hält bis %1 (%2)</translation>
  </message>
  <message>
   <source>late: should have begun by %1</source>
   <translation>spät: hätte bis %1 beginnen müssen</translation>
  </message>
  <message>
   <source>begin by %1 (%2 left)</source>
   <translation>beginnen bis %1 (noch %2)</translation>
  </message>
  <message>
   <source>ends first: %1</source>
   <translation>endet zuerst: %1</translation>
  </message>
 </context>
 <context>
  <name>TimelineView</name>
  <message>
   <source>Timeline of the release</source>
   <translation>Zeitplan der Freigabe</translation>
  </message>
  <message>
   <source>No show time is set, so nothing can be planned backwards from it.</source>
   <translation>Keine Showzeit ist gesetzt, also kann nichts von ihr zurückgeplant werden.</translation>
  </message>
  <message>
   <source>show %1</source>
   <translation>Show %1</translation>
  </message>
  <message>
   <source>end %1</source>
   <translation>Ende %1</translation>
  </message>
  <message>
   <source>now %1</source>
   <translation>jetzt %1</translation>
  </message>
 </context>
 <context>
  <name>TwoPane</name>
  <message>
   <source>Back to the list</source>
   <translation>Zurück zur Liste</translation>
  </message>
 </context>
 <context>
  <name>Views</name>
  <message>
   <source>Checklist</source>
   <translation>Prüfliste</translation>
  </message>
  <message>
   <source>Crew</source>
   <translation>Mannschaft</translation>
  </message>
  <message>
   <source>Field</source>
   <translation>Feld</translation>
  </message>
  <message>
   <source>Faults</source>
   <translation>Fehler</translation>
  </message>
  <message>
   <source>Tester</source>
   <translation>Prüfer</translation>
  </message>
  <message>
   <source>Weather</source>
   <translation>Wetter</translation>
  </message>
  <message>
   <source>Record</source>
   <translation>Protokoll</translation>
  </message>
  <message>
   <source>Report</source>
   <translation>Bericht</translation>
  </message>
 </context>
 <context>
  <name>WalkPanel</name>
  <message>
   <source>Now probe</source>
   <translation>Jetzt messen</translation>
  </message>
  <message>
   <source>Back one pin</source>
   <translation>Einen Stift zurück</translation>
  </message>
  <message>
   <source>Skip: leave it unread</source>
   <translation>Überspringen: ungelesen lassen</translation>
  </message>
  <message>
   <source>The probe is on it and it reads open</source>
   <translation>Die Spitze liegt an und es liest offen</translation>
  </message>
  <message>
   <source>All pins are walked</source>
   <translation>Alle Stifte sind begangen</translation>
  </message>
  <message>
   <source>Lift the probe first. %1 of %2</source>
   <translation>Erst die Spitze abheben. %1 von %2</translation>
  </message>
  <message>
   <source>%1 of %2; the value is taken when it is steady</source>
   <translation>%1 von %2; der Wert wird genommen, wenn er ruhig ist</translation>
  </message>
 </context>
 <context>
  <name>WeatherView</name>
  <message>
   <source>Wind</source>
   <translation>Wind</translation>
  </message>
  <message>
   <source>Solid line and discs: mean. Broken line and crosses: gust.</source>
   <translation>Volle Linie und Scheiben: Mittel. Gestrichelte Linie und Kreuze: Böe.</translation>
  </message>
  <message>
   <source>Enter wind read by hand …</source>
   <translation>Von Hand gemessenen Wind eingeben …</translation>
  </message>
  <message>
   <source>Thunder</source>
   <translation>Donner</translation>
  </message>
  <message>
   <source>Seconds from flash to thunder; empty where nobody counted</source>
   <translation>Sekunden vom Blitz zum Donner; leer, wenn niemand gezählt hat</translation>
  </message>
  <message>
   <source>Seconds from flash to thunder</source>
   <translation>Sekunden vom Blitz zum Donner</translation>
  </message>
  <message>
   <source>Thunder was heard now</source>
   <translation>Jetzt war Donner zu hören</translation>
  </message>
  <message>
   <source>'%1' is not a number of seconds.</source>
   <translation>„%1“ ist keine Anzahl Sekunden.</translation>
  </message>
  <message>
   <source>The checklist does not ask for it.</source>
   <translation>Die Prüfliste fragt nicht danach.</translation>
  </message>
  <message>
   <source>No thunder is in the record.</source>
   <translation>Im Protokoll steht kein Donner.</translation>
  </message>
  <message>
   <source>%1: thunder</source>
   <translation>%1: Donner</translation>
  </message>
  <message>
   <source>%1: thunder, %2 s after its flash</source>
   <translation>%1: Donner, %2 s nach dem Blitz</translation>
  </message>
 </context>
 <context>
  <name>WindPlot</name>
  <message>
   <source>Wind and gust over the last two hours</source>
   <translation>Wind und Böe der letzten zwei Stunden</translation>
  </message>
  <message>
   <source>now %1</source>
   <translation>jetzt %1</translation>
  </message>
  <message>
   <source>m/s</source>
   <translation>m/s</translation>
  </message>
  <message>
   <source>limit of the mean</source>
   <translation>Grenze des Mittels</translation>
  </message>
  <message>
   <source>limit of the gust</source>
   <translation>Grenze der Böe</translation>
  </message>
  <message>
   <source>No wind is in the record for the last two hours.</source>
   <translation>Für die letzten zwei Stunden steht kein Wind im Protokoll.</translation>
  </message>
 </context>
 <context>
  <name>Window</name>
  <message>
   <source>Making the demonstration …</source>
   <translation>Die Vorführung wird vorbereitet …</translation>
  </message>
  <message>
   <source>%1 – walkdown</source>
   <translation>%1 – walkdown</translation>
  </message>
  <message>
   <source>Open a record</source>
   <translation>Protokoll öffnen</translation>
  </message>
  <message>
   <source>Reading the record …</source>
   <translation>Lese das Protokoll …</translation>
  </message>
  <message>
   <source>Demo: sweep</source>
   <translation>Demo: Durchgang</translation>
  </message>
  <message>
   <source>The simulated tester reads every pin</source>
   <translation>Der simulierte Prüfer liest jeden Stift</translation>
  </message>
  <message>
   <source>A demonstration: show, people and faults are invented. Everybody's passphrase is: %1</source>
   <translation>Eine Vorführung: Show, Personen und Fehler sind erfunden. Der Kennsatz aller ist: %1</translation>
  </message>
  <message>
   <source>Light and size of text</source>
   <translation>Licht und Schriftgröße</translation>
  </message>
  <message>
   <source>Light and text</source>
   <translation>Licht und Text</translation>
  </message>
  <message>
   <source>A demonstration: everybody's passphrase is: %1</source>
   <translation>Eine Vorführung: der Kennsatz aller ist: %1</translation>
  </message>
 </context>
 <context>
  <name>walkdown::gui</name>
  <message>
   <source>%1 s</source>
   <translation>%1 s</translation>
  </message>
  <message>
   <source>%1 min</source>
   <translation>%1 min</translation>
  </message>
  <message>
   <source>%1 h %2</source>
   <translation>%1 h %2</translation>
  </message>
  <message>
   <source>Plan</source>
   <translation>Plan</translation>
  </message>
  <message>
   <source>The wiring table, as CSV: one row a pin.</source>
   <translation>Die Verdrahtungstabelle als CSV: eine Zeile je Stift.</translation>
  </message>
  <message>
   <source>Modules</source>
   <translation>Module</translation>
  </message>
  <message>
   <source>How many pins each rail has; may stay empty: a rail is then as long as its last planned pin.</source>
   <translation>Wie viele Stifte jede Schiene hat; darf leer bleiben: eine Schiene ist dann so lang wie ihr letzter geplanter Stift.</translation>
  </message>
  <message>
   <source>Site</source>
   <translation>Gelände</translation>
  </message>
  <message>
   <source>Positions and boundaries on the ground, as GeoJSON; may stay empty.</source>
   <translation>Positionen und Grenzen am Boden, als GeoJSON; darf leer bleiben.</translation>
  </message>
  <message>
   <source>Distances</source>
   <translation>Abstände</translation>
  </message>
  <message>
   <source>The table of distances that holds here. The one that comes with the program is an example: yours replaces it.</source>
   <translation>Die Abstandstabelle, die hier gilt. Die mitgelieferte ist ein Beispiel: Ihre ersetzt sie.</translation>
  </message>
  <message>
   <source>Igniters</source>
   <translation>Zünder</translation>
  </message>
  <message>
   <source>Resistances and currents. The generic file has no currents: they come from the maker's sheet.</source>
   <translation>Widerstände und Ströme. Die allgemeine Datei hat keine Ströme: sie kommen vom Datenblatt des Herstellers.</translation>
  </message>
  <message>
   <source>Tester</source>
   <translation>Prüfer</translation>
  </message>
  <message>
   <source>How the tester's port is set and its lines look.</source>
   <translation>Wie der Anschluss des Prüfers eingestellt ist und seine Zeilen aussehen.</translation>
  </message>
  <message>
   <source>Checklist</source>
   <translation>Prüfliste</translation>
  </message>
  <message>
   <source>The stages and items of the day.</source>
   <translation>Die Abschnitte und Punkte des Tages.</translation>
  </message>
 </context>
 <context>
  <name>words</name>
  <message>
   <source>fits</source>
   <translation>passt</translation>
  </message>
  <message>
   <source>doubtful</source>
   <translation>zweifelhaft</translation>
  </message>
  <message>
   <source>low</source>
   <translation>niedrig</translation>
  </message>
  <message>
   <source>high</source>
   <translation>hoch</translation>
  </message>
  <message>
   <source>open</source>
   <translation>offen</translation>
  </message>
  <message>
   <source>short</source>
   <translation>kurzgeschlossen</translation>
  </message>
  <message>
   <source>unsteady</source>
   <translation>unruhig</translation>
  </message>
  <message>
   <source>stray</source>
   <translation>fremd</translation>
  </message>
  <message>
   <source>unread</source>
   <translation>ungelesen</translation>
  </message>
  <message>
   <source>stale</source>
   <translation>veraltet</translation>
  </message>
  <message>
   <source>igniter missing</source>
   <translation>Zünder fehlt</translation>
  </message>
  <message>
   <source>one igniter too many</source>
   <translation>ein Zünder zu viel</translation>
  </message>
  <message>
   <source>poor joint</source>
   <translation>schlechte Verbindung</translation>
  </message>
  <message>
   <source>leak</source>
   <translation>Nebenschluss</translation>
  </message>
  <message>
   <source>intermittent</source>
   <translation>Wackelkontakt</translation>
  </message>
  <message>
   <source>stray load</source>
   <translation>fremde Last</translation>
  </message>
  <message>
   <source>wrong lead</source>
   <translation>falsche Leitung</translation>
  </message>
  <message>
   <source>wrong igniter</source>
   <translation>falscher Zünder</translation>
  </message>
  <message>
   <source>unknown</source>
   <translation>unbekannt</translation>
  </message>
  <message>
   <source>swapped</source>
   <translation>vertauscht</translation>
  </message>
  <message>
   <source>shifted</source>
   <translation>verschoben</translation>
  </message>
  <message>
   <source>rail turned round</source>
   <translation>Schiene umgedreht</translation>
  </message>
  <message>
   <source>rails exchanged</source>
   <translation>Schienen vertauscht</translation>
  </message>
  <message>
   <source>modules exchanged</source>
   <translation>Module vertauscht</translation>
  </message>
  <message>
   <source>tester not zeroed</source>
   <translation>Prüfer nicht genullt</translation>
  </message>
  <message>
   <source>wire differs</source>
   <translation>Draht weicht ab</translation>
  </message>
  <message>
   <source>to do</source>
   <translation>zu tun</translation>
  </message>
  <message>
   <source>due</source>
   <translation>fällig</translation>
  </message>
  <message>
   <source>holds</source>
   <translation>hält</translation>
  </message>
  <message>
   <source>expired</source>
   <translation>abgelaufen</translation>
  </message>
  <message>
   <source>broken</source>
   <translation>gebrochen</translation>
  </message>
  <message>
   <source>refused</source>
   <translation>verweigert</translation>
  </message>
  <message>
   <source>waived</source>
   <translation>erlassen</translation>
  </message>
  <message>
   <source>hold</source>
   <translation>Halt</translation>
  </message>
  <message>
   <source>released</source>
   <translation>freigegeben</translation>
  </message>
  <message>
   <source>ready</source>
   <translation>bereit</translation>
  </message>
  <message>
   <source>after</source>
   <translation>danach</translation>
  </message>
  <message>
   <source>checking</source>
   <translation>wird geprüft</translation>
  </message>
 </context>
</TS>
