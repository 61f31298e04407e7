<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<TS version="2.1" language="de">
 <context>
  <name>Against</name>
  <message>
   <source>“%1”</source>
   <translation>„%1“</translation>
  </message>
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
   <translation>Abschnitt „%1“ nicht geschlossen</translation>
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
  <name>AskFile</name>
  <message>
   <source>Up</source>
   <translation>Nach oben</translation>
  </message>
  <message>
   <source>New folder</source>
   <translation>Neuer Ordner</translation>
  </message>
  <message>
   <source>Look in:</source>
   <translation>Suchen in:</translation>
  </message>
  <message>
   <source>File name:</source>
   <translation>Dateiname:</translation>
  </message>
  <message>
   <source>Files of type:</source>
   <translation>Dateityp:</translation>
  </message>
  <message>
   <source>Cancel</source>
   <translation>Abbrechen</translation>
  </message>
  <message>
   <source>Save</source>
   <translation>Sichern</translation>
  </message>
  <message>
   <source>Open</source>
   <translation>Öffnen</translation>
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
   <translation>Passphrase für einen neuen Schlüssel, mindestens 8 Zeichen; leer, wenn die Person einen hat</translation>
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
   <translation>Passphrase für einen neuen Schlüssel</translation>
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
  <name>FaultReadings</name>
  <message>
   <source>nothing planned</source>
   <translation>nichts geplant</translation>
  </message>
  <message>
   <source>planned %1 to %2 ohm</source>
   <translation>geplant %1 bis %2 Ohm</translation>
  </message>
  <message>
   <source>%1, %2 ohm</source>
   <translation>%1, %2 Ohm</translation>
  </message>
  <message numerus="yes">
   <source>and %n more</source>
   <translation>
    <numerusform>und %n weiterer</numerusform>
    <numerusform>und %n weitere</numerusform>
   </translation>
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
   <translation>wo die Mannschaft zuletzt war</translation>
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
   <translation>Fehler in der Reihenfolge des Rundgangs</translation>
  </message>
  <message>
   <source>Print the walk sheet …</source>
   <translation>Laufzettel drucken …</translation>
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
   <translation>Es gibt keinen Stift %1; ein Stift schreibt sich M01/R1/P05.</translation>
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
   <translation>Eine Übergabe unterschreiben beide, zuerst wer empfängt. Bis auch die gebende Person unterschrieben hat, hält sie den Schlüssel.</translation>
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
   <translation>Wohin die nächste Person geht; die Stifte dort gelten von da an als ungelesen</translation>
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
   <translation>Zeitplan</translation>
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
  <name>Sentences</name>
  <message>
   <source>the line is not as a record writes it: a checkpoint holds one text and nothing else</source>
   <translation>die Zeile ist nicht, wie ein Protokoll sie schreibt: ein Prüfpunkt hat einen Text und sonst nichts</translation>
  </message>
  <message>
   <source>the line is not as a record writes it: no entry number</source>
   <translation>die Zeile ist nicht, wie ein Protokoll sie schreibt: keine Nummer des Eintrags</translation>
  </message>
  <message>
   <source>the line is not as a record writes it: no time</source>
   <translation>die Zeile ist nicht, wie ein Protokoll sie schreibt: keine Zeit</translation>
  </message>
  <message>
   <source>the line is not as a record writes it: the time is not one, in UTC with three decimals</source>
   <translation>die Zeile ist nicht, wie ein Protokoll sie schreibt: die Zeit ist keine, in UTC mit drei Stellen</translation>
  </message>
  <message>
   <source>the line is not as a record writes it: no boot clock</source>
   <translation>die Zeile ist nicht, wie ein Protokoll sie schreibt: keine Uhr seit dem Start</translation>
  </message>
  <message>
   <source>the line is not as a record writes it: no kind</source>
   <translation>die Zeile ist nicht, wie ein Protokoll sie schreibt: keine Art</translation>
  </message>
  <message>
   <source>the line is not as a record writes it: no body</source>
   <translation>die Zeile ist nicht, wie ein Protokoll sie schreibt: kein Inhalt</translation>
  </message>
  <message>
   <source>the line is not as a record writes it: the body has another spelling at byte %1</source>
   <translation>die Zeile ist nicht, wie ein Protokoll sie schreibt: der Inhalt ist bei Byte %1 anders geschrieben</translation>
  </message>
  <message>
   <source>the line is longer than a record allows</source>
   <translation>die Zeile ist länger, als ein Protokoll erlaubt</translation>
  </message>
  <message>
   <source>entry %1 should stand here, and it is entry %2</source>
   <translation>hier müsste Eintrag %1 stehen, und es ist Eintrag %2</translation>
  </message>
  <message>
   <source>no checkpoint comes for too long</source>
   <translation>zu lange kommt kein Prüfpunkt</translation>
  </message>
  <message>
   <source>a checkpoint stands here with no entry before it</source>
   <translation>hier steht ein Prüfpunkt ohne Eintrag davor</translation>
  </message>
  <message>
   <source>a checkpoint has one signature</source>
   <translation>ein Prüfpunkt hat eine Unterschrift</translation>
  </message>
  <message>
   <source>the checkpoint is not signed by a station of this record</source>
   <translation>der Prüfpunkt ist von keiner Station dieses Protokolls unterschrieben</translation>
  </message>
  <message>
   <source>the checkpoint seals %1 entries, and %2 stand before it</source>
   <translation>der Prüfpunkt versiegelt %1 Einträge, und %2 stehen davor</translation>
  </message>
  <message>
   <source>line %1 was changed after it was sealed</source>
   <translation>Zeile %1 wurde nach dem Versiegeln verändert</translation>
  </message>
  <message>
   <source>one of the lines %1 to %2 was changed after it was sealed</source>
   <translation>eine der Zeilen %1 bis %2 wurde nach dem Versiegeln verändert</translation>
  </message>
  <message>
   <source>line %1</source>
   <translation>Zeile %1</translation>
  </message>
  <message>
   <source>one of the lines %1 to %2</source>
   <translation>eine der Zeilen %1 bis %2</translation>
  </message>
  <message>
   <source>the checkpoint is of another record: %1</source>
   <translation>der Prüfpunkt ist von einem anderen Protokoll: %1</translation>
  </message>
  <message>
   <source>the file ends in the middle of this line: its end was cut, or never written</source>
   <translation>die Datei endet mitten in dieser Zeile: ihr Ende wurde abgeschnitten oder nie geschrieben</translation>
  </message>
  <message>
   <source>no checkpoint follows %1: the end was cut, or never acknowledged</source>
   <translation>kein Prüfpunkt folgt, nach: %1. Das Ende wurde abgeschnitten oder nie bestätigt</translation>
  </message>
  <message>
   <source>the file is empty</source>
   <translation>die Datei ist leer</translation>
  </message>
  <message>
   <source>the opening does not hold: %1</source>
   <translation>die Eröffnung hält nicht: %1</translation>
  </message>
  <message>
   <source>the record was closed, and this entry comes after it</source>
   <translation>das Protokoll wurde geschlossen, und dieser Eintrag kommt danach</translation>
  </message>
  <message>
   <source>the sign-off belongs to another record</source>
   <translation>die Unterschrift gehört zu einem anderen Protokoll</translation>
  </message>
  <message>
   <source>the sign-off names a state that this record was not in shortly before</source>
   <translation>die Unterschrift nennt einen Stand, den dieses Protokoll kurz davor nicht hatte</translation>
  </message>
  <message>
   <source>the sign-off is too old for this entry</source>
   <translation>die Unterschrift ist zu alt für diesen Eintrag</translation>
  </message>
  <message>
   <source>the sign-off is of another time than its entry</source>
   <translation>die Unterschrift ist von anderer Zeit als ihr Eintrag</translation>
  </message>
  <message>
   <source>the sign-off was used before</source>
   <translation>die Unterschrift wurde schon benutzt</translation>
  </message>
  <message>
   <source>the cosignature is for another record</source>
   <translation>die Mitunterschrift gilt einem anderen Protokoll</translation>
  </message>
  <message>
   <source>the cosignature is by nobody who is enrolled as witness</source>
   <translation>die Mitunterschrift ist von niemandem, der als Zeuge eingetragen ist</translation>
  </message>
  <message>
   <source>the cosigned state is not one that this record was in</source>
   <translation>den mitunterschriebenen Stand hatte dieses Protokoll nicht</translation>
  </message>
  <message>
   <source>the entry %1 does not hold: %2</source>
   <translation>der Eintrag %1 hält nicht: %2</translation>
  </message>
  <message>
   <source>it has to be signed, and is not</source>
   <translation>er muss unterschrieben sein und ist es nicht</translation>
  </message>
  <message>
   <source>the entry %1 does not hold: %2 signed something else than the entry says</source>
   <translation>der Eintrag %1 hält nicht: %2 hat etwas anderes unterschrieben, als der Eintrag sagt</translation>
  </message>
  <message>
   <source>it is signed by %1 as %2, and says %3 as %4</source>
   <translation>unterschrieben ist er von %1 als %2, und er sagt %3 als %4</translation>
  </message>
  <message>
   <source>the release was signed and not possible at that moment; %1</source>
   <translation>die Freigabe wurde unterschrieben und war in dem Moment nicht möglich; %1</translation>
  </message>
  <message>
   <source>this is no checkpoint</source>
   <translation>das ist kein Prüfpunkt</translation>
  </message>
  <message>
   <source>pin %1 of rail %2, module %3</source>
   <translation>Stift %1 auf Schiene %2, Modul %3</translation>
  </message>
  <message>
   <source>Check the plug, the lead and the igniter on %1: the circuit is open; mend it, then read it again</source>
   <translation>Stecker, Leitung und Zünder an %1 prüfen: der Kreis ist offen; beheben, dann neu messen</translation>
  </message>
  <message>
   <source>Take the shunt off the lead on %1, or find where its two conductors touch; then read it again</source>
   <translation>Den Kurzschluss von der Leitung an %1 nehmen, oder suchen, wo sich ihre zwei Leiter berühren; dann neu messen</translation>
  </message>
  <message>
   <source>Count the igniters on %1: one fewer is connected than planned; add it, then read it again</source>
   <translation>Zünder an %1 zählen: einer weniger ist angeschlossen als geplant; anschließen, dann neu messen</translation>
  </message>
  <message>
   <source>Count the igniters on %1: one more is connected than planned; take it off, then read it again</source>
   <translation>Zünder an %1 zählen: einer mehr ist angeschlossen als geplant; abnehmen, dann neu messen</translation>
  </message>
  <message>
   <source>Make the splices and the plug on %1 anew: a joint adds resistance; then read it again</source>
   <translation>Verbindungen und Stecker an %1 neu machen: eine Verbindung fügt Widerstand hinzu; dann neu messen</translation>
  </message>
  <message>
   <source>Dry and insulate the splices on %1: current leaks past the igniter; then read it again</source>
   <translation>Verbindungen an %1 trocknen und isolieren: Strom fließt am Zünder vorbei; dann neu messen</translation>
  </message>
  <message>
   <source>Re-seat the plug and tug each splice on %1: its readings jump; then read it several times</source>
   <translation>Stecker neu einstecken und an jeder Verbindung an %1 ziehen: die Messwerte springen; dann mehrmals messen</translation>
  </message>
  <message>
   <source>See whose lead is on %1: nothing is planned there; move it to its own pin, then read both again</source>
   <translation>Sehen, wessen Leitung an %1 ist: dort ist nichts geplant; auf ihren eigenen Stift setzen, dann beide neu messen</translation>
  </message>
  <message>
   <source>Compare length and gauge of the lead on %1 with the plan; change the one that is wrong, then read it again</source>
   <translation>Länge und Querschnitt der Leitung an %1 mit dem Plan vergleichen; was falsch ist, ändern, dann neu messen</translation>
  </message>
  <message>
   <source>Compare the type of igniter on %1 with the plan; change it, then read it again</source>
   <translation>Die Art des Zünders an %1 mit dem Plan vergleichen; tauschen, dann neu messen</translation>
  </message>
  <message>
   <source>Read %1 again: its readings cannot be believed or explained; if they stay, trace its circuit by eye</source>
   <translation>%1 neu messen: die Messwerte sind nicht glaubhaft oder nicht zu erklären; wenn sie bleiben, den Kreis mit dem Auge verfolgen</translation>
  </message>
  <message>
   <source>Exchange the leads on %1 and %2; then read both again</source>
   <translation>Die Leitungen an %1 und %2 tauschen; dann beide neu messen</translation>
  </message>
  <message>
   <source>On module %1, rail %2, the leads planned for pins %3 to %4 sit %5 pin too high: move each back to its own pin, then read the rail again</source>
   <translation>An Modul %1, Schiene %2, sitzen die für Stift %3 bis %4 geplanten Leitungen %5 Stift zu hoch: jede auf ihren eigenen Stift zurücksetzen, dann die Schiene neu messen</translation>
  </message>
  <message>
   <source>On module %1, rail %2, the leads planned for pins %3 to %4 sit %5 pins too high: move each back to its own pin, then read the rail again</source>
   <translation>An Modul %1, Schiene %2, sitzen die für Stift %3 bis %4 geplanten Leitungen %5 Stifte zu hoch: jede auf ihren eigenen Stift zurücksetzen, dann die Schiene neu messen</translation>
  </message>
  <message>
   <source>On module %1, rail %2, the leads planned for pins %3 to %4 sit %5 pin too low: move each back to its own pin, then read the rail again</source>
   <translation>An Modul %1, Schiene %2, sitzen die für Stift %3 bis %4 geplanten Leitungen %5 Stift zu tief: jede auf ihren eigenen Stift zurücksetzen, dann die Schiene neu messen</translation>
  </message>
  <message>
   <source>On module %1, rail %2, the leads planned for pins %3 to %4 sit %5 pins too low: move each back to its own pin, then read the rail again</source>
   <translation>An Modul %1, Schiene %2, sitzen die für Stift %3 bis %4 geplanten Leitungen %5 Stifte zu tief: jede auf ihren eigenen Stift zurücksetzen, dann die Schiene neu messen</translation>
  </message>
  <message>
   <source>Unplug rail %1 of module %2 and turn it round; then read it again</source>
   <translation>Schiene %1 von Modul %2 ausstecken und umdrehen; dann neu messen</translation>
  </message>
  <message>
   <source>Exchange the plugs of rail %1 of module %2 and rail %3 of module %4; then read both again</source>
   <translation>Die Stecker von Schiene %1 an Modul %2 und Schiene %3 an Modul %4 tauschen; dann beide neu messen</translation>
  </message>
  <message>
   <source>Exchange modules %1 and %2 (or their addresses); then read both again</source>
   <translation>Module %1 und %2 (oder ihre Adressen) tauschen; dann beide neu messen</translation>
  </message>
  <message>
   <source>Touch the tester's probe tips together, zero it, and read the field again: every reading is off by the same ohms</source>
   <translation>Die Prüfspitzen zusammenhalten, den Prüfer nullen und das Feld neu messen: jeder Messwert liegt um dieselben Ohm daneben</translation>
  </message>
  <message>
   <source>Check gauge and material of the wire on the reels against the plan: all leads are off by one factor; correct the plan or the wire, then read again</source>
   <translation>Querschnitt und Material des Drahts auf den Rollen mit dem Plan vergleichen: alle Leitungen weichen um einen Faktor ab; Plan oder Draht berichtigen, dann neu messen</translation>
  </message>
  <message>
   <source>%1; no reading tells this from %2: to decide, %3</source>
   <translation>%1; kein Messwert unterscheidet das von: %2. Um zu entscheiden: %3</translation>
  </message>
  <message>
   <source>%1; or it is, at %2 %, %3: to decide, %4</source>
   <translation>%1; oder es ist, mit %2 %: %3. Um zu entscheiden: %4</translation>
  </message>
  <message>
   <source>an open circuit</source>
   <translation>ein offener Kreis</translation>
  </message>
  <message>
   <source>a short</source>
   <translation>ein Kurzschluss</translation>
  </message>
  <message>
   <source>one igniter too few</source>
   <translation>ein Zünder zu wenig</translation>
  </message>
  <message>
   <source>one igniter too many</source>
   <translation>ein Zünder zu viel</translation>
  </message>
  <message>
   <source>a poor joint</source>
   <translation>eine schlechte Verbindung</translation>
  </message>
  <message>
   <source>a leak</source>
   <translation>ein Nebenschluss</translation>
  </message>
  <message>
   <source>a loose contact</source>
   <translation>ein Wackelkontakt</translation>
  </message>
  <message>
   <source>somebody else's lead</source>
   <translation>eine fremde Leitung</translation>
  </message>
  <message>
   <source>a lead of another length or gauge</source>
   <translation>eine Leitung anderer Länge oder anderen Querschnitts</translation>
  </message>
  <message>
   <source>another type of igniter</source>
   <translation>eine andere Art Zünder</translation>
  </message>
  <message>
   <source>test leads that were not zeroed</source>
   <translation>nicht genullte Prüfleitungen</translation>
  </message>
  <message>
   <source>another wire throughout</source>
   <translation>durchweg anderer Draht</translation>
  </message>
  <message>
   <source>something that no reading explains</source>
   <translation>etwas, das kein Messwert erklärt</translation>
  </message>
  <message>
   <source>see whether the shunt of %1 is still on</source>
   <translation>sehen, ob der Kurzschluss an %1 noch sitzt</translation>
  </message>
  <message>
   <source>count the igniters on %1</source>
   <translation>die Zünder an %1 zählen</translation>
  </message>
  <message>
   <source>tug each splice on %1 and read it again</source>
   <translation>an jeder Verbindung an %1 ziehen und neu messen</translation>
  </message>
  <message>
   <source>see whether a splice on %1 is wet</source>
   <translation>sehen, ob eine Verbindung an %1 nass ist</translation>
  </message>
  <message>
   <source>tug the plug and the splices on %1 and read it again</source>
   <translation>an Stecker und Verbindungen an %1 ziehen und neu messen</translation>
  </message>
  <message>
   <source>compare the lead on %1 with the plan</source>
   <translation>die Leitung an %1 mit dem Plan vergleichen</translation>
  </message>
  <message>
   <source>read the label of the igniter on %1</source>
   <translation>das Etikett des Zünders an %1 lesen</translation>
  </message>
  <message>
   <source>touch the tester's probe tips together and read that</source>
   <translation>die Prüfspitzen zusammenhalten und messen</translation>
  </message>
  <message>
   <source>read gauge and material on the reels</source>
   <translation>Querschnitt und Material auf den Rollen lesen</translation>
  </message>
  <message>
   <source>unplug the lead on %1 and look at it</source>
   <translation>die Leitung an %1 ausstecken und ansehen</translation>
  </message>
  <message>
   <source>read the tags of the leads on %1 and %2</source>
   <translation>die Schilder der Leitungen an %1 und %2 lesen</translation>
  </message>
  <message>
   <source>pull the lead on %1: if its tag is that of the pin %2 below, the row is shifted</source>
   <translation>die Leitung an %1 ziehen: ist ihr Schild das des Stifts %2 darunter, ist die Reihe verschoben</translation>
  </message>
  <message>
   <source>pull the lead on %1: if its tag is that of the pin %2 above, the row is shifted</source>
   <translation>die Leitung an %1 ziehen: ist ihr Schild das des Stifts %2 darüber, ist die Reihe verschoben</translation>
  </message>
  <message>
   <source>see which way round rail %1 of module %2 is plugged</source>
   <translation>sehen, wie herum Schiene %1 von Modul %2 steckt</translation>
  </message>
  <message>
   <source>read the tags on the plugs of rail %1, module %2 and rail %3, module %4</source>
   <translation>die Schilder an den Steckern von Schiene %1, Modul %2 und Schiene %3, Modul %4 lesen</translation>
  </message>
  <message>
   <source>read the number plates and addresses of modules %1 and %2</source>
   <translation>Nummernschilder und Adressen der Module %1 und %2 lesen</translation>
  </message>
  <message>
   <source>%1 and %2 exchanged</source>
   <translation>%1 und %2 vertauscht</translation>
  </message>
  <message>
   <source>pins %1 to %2 of rail %3, module %4 shifted by %5</source>
   <translation>Stifte %1 bis %2 auf Schiene %3, Modul %4 um %5 verschoben</translation>
  </message>
  <message>
   <source>rail %1 of module %2 turned round</source>
   <translation>Schiene %1 von Modul %2 verdreht</translation>
  </message>
  <message>
   <source>rail %1 of module %2 and rail %3 of module %4 exchanged</source>
   <translation>Schiene %1 an Modul %2 und Schiene %3 an Modul %4 vertauscht</translation>
  </message>
  <message>
   <source>modules %1 and %2 exchanged</source>
   <translation>Module %1 und %2 vertauscht</translation>
  </message>
  <message>
   <source>50 mA, WAC 212-17-317(6)</source>
   <translation>50 mA, WAC 212-17-317(6)</translation>
  </message>
  <message>
   <source>the maker's test_max_a of %1</source>
   <translation>test_max_a des Herstellers für %1</translation>
  </message>
  <message>
   <source>%1 % of the no-fire current of %2</source>
   <translation>%1 % des Nichtzündstroms von %2</translation>
  </message>
  <message>
   <source>The tester's current cannot be judged: its profile gives no test_current_a; look at the meter's and the igniters' data sheets before you connect it</source>
   <translation>Der Strom des Prüfers ist nicht zu beurteilen: sein Profil nennt kein test_current_a; vor dem Anschließen die Datenblätter von Messgerät und Zündern ansehen</translation>
  </message>
  <message>
   <source>The tester's current cannot be judged: %1 has no no_fire_a; type it in from the maker's data sheet before you connect the tester</source>
   <translation>Der Strom des Prüfers ist nicht zu beurteilen: %1 hat kein no_fire_a; vor dem Anschließen des Prüfers aus dem Datenblatt des Herstellers eintragen</translation>
  </message>
  <message>
   <source>The tester drives %1 mA into a short, the limit is %2 mA (%3)</source>
   <translation>Der Prüfer treibt %1 mA in einen Kurzschluss, die Grenze ist %2 mA (%3)</translation>
  </message>
  <message>
   <source>The tester drives %1 mA into a short, not above the limit of %2 mA (%3)</source>
   <translation>Der Prüfer treibt %1 mA in einen Kurzschluss, nicht über der Grenze von %2 mA (%3)</translation>
  </message>
  <message>
   <source>reading with this tester is refused</source>
   <translation>mit diesem Prüfer wird nicht gemessen</translation>
  </message>
  <message>
   <source>use a tester that stays below it</source>
   <translation>einen Prüfer nehmen, der darunter bleibt</translation>
  </message>
  <message>
   <source>The firing current of %1 cannot be judged: its igniter or its wire is not in the igniter file; add it there and import the plan again</source>
   <translation>Der Zündstrom von %1 ist nicht zu beurteilen: Zünder oder Draht stehen nicht in der Zünderdatei; dort eintragen und den Plan neu einlesen</translation>
  </message>
  <message>
   <source>The firing current cannot be judged: the igniter file has no [supply]</source>
   <translation>Der Zündstrom ist nicht zu beurteilen: die Zünderdatei hat kein [supply]</translation>
  </message>
  <message>
   <source>The firing current cannot be judged: no all_fire_a is given for %1; take it from the maker's sheet</source>
   <translation>Der Zündstrom ist nicht zu beurteilen: für %1 ist kein all_fire_a angegeben; aus dem Blatt des Herstellers nehmen</translation>
  </message>
  <message>
   <source>%1: %2 A at least through each igniter, %3 times its all-fire current of %4 A</source>
   <translation>%1: mindestens %2 A durch jeden Zünder, das %3-fache seines Allzündstroms von %4 A</translation>
  </message>
  <message>
   <source>%1; the loop may have %2 ohm, it has %3</source>
   <translation>%1; die Schleife darf %2 Ohm haben, sie hat %3</translation>
  </message>
  <message>
   <source>%1; in a series string the fastest bridge may part before the slowest has started: use the maker's series current</source>
   <translation>%1; in einer Reihe kann die schnellste Brücke reißen, bevor die langsamste begonnen hat: den Reihenstrom des Herstellers nehmen</translation>
  </message>
  <message>
   <source>not answered yet</source>
   <translation>noch nicht beantwortet</translation>
  </message>
  <message>
   <source>due at %1, not answered yet</source>
   <translation>fällig um %1, noch nicht beantwortet</translation>
  </message>
  <message>
   <source>waits for its second signature</source>
   <translation>wartet auf die zweite Unterschrift</translation>
  </message>
  <message>
   <source>was answered more than %1 ago</source>
   <translation>wurde vor mehr als %1 beantwortet</translation>
  </message>
  <message>
   <source>was read more than %1 ago</source>
   <translation>wurde vor mehr als %1 gemessen</translation>
  </message>
  <message>
   <source>waived by %1 and %2: %3 (%4)</source>
   <translation>erlassen von %1 und %2: %3 (%4)</translation>
  </message>
  <message>
   <source>the show has no site to measure on</source>
   <translation>die Show hat kein Gelände, auf dem zu messen wäre</translation>
  </message>
  <message>
   <source>the wait after the last thunder is over</source>
   <translation>die Wartezeit nach dem letzten Donner ist vorbei</translation>
  </message>
  <message>
   <source>no thunder near enough was told</source>
   <translation>kein naher Donner ist gemeldet</translation>
  </message>
  <message>
   <source>thunder: wait until %1</source>
   <translation>Donner: warten bis %1</translation>
  </message>
  <message>
   <source>wait until %1</source>
   <translation>warten bis %1</translation>
  </message>
  <message>
   <source>the wait is over</source>
   <translation>die Wartezeit ist vorbei</translation>
  </message>
  <message>
   <source>the wait begins with %1</source>
   <translation>die Wartezeit beginnt mit %1</translation>
  </message>
  <message>
   <source>%1 has the %2</source>
   <translation>%1 hat: %2</translation>
  </message>
  <message>
   <source>%1 has the %2, in the field</source>
   <translation>%1 hat: %2, im Feld</translation>
  </message>
  <message>
   <source>the %1 is in the %2</source>
   <translation>%1 liegt in: %2</translation>
  </message>
  <message>
   <source>the tag of %1 is not back</source>
   <translation>die Marke von %1 ist nicht zurück</translation>
  </message>
  <message>
   <source>%1 while %2 is in the field</source>
   <translation>%1, während %2 im Feld ist</translation>
  </message>
  <message>
   <source>%1; it has to be %2</source>
   <translation>%1; gehört: %2</translation>
  </message>
  <message>
   <source>%1 or %2</source>
   <translation>%1 oder %2</translation>
  </message>
  <message>
   <source>with the %1</source>
   <translation>bei %1</translation>
  </message>
  <message>
   <source>in the %1</source>
   <translation>in %1</translation>
  </message>
  <message>
   <source>nobody is in the field</source>
   <translation>niemand ist im Feld</translation>
  </message>
  <message>
   <source>%1 is in the field</source>
   <translation>%1 ist im Feld</translation>
  </message>
  <message>
   <source>%1 are in the field: %2</source>
   <translation>%1 sind im Feld: %2</translation>
  </message>
  <message>
   <source>gusts of %1 are above %2</source>
   <translation>Böen von %1 liegen über %2</translation>
  </message>
  <message>
   <source>a mean wind of %1 is above %2</source>
   <translation>ein mittlerer Wind von %1 liegt über %2</translation>
  </message>
  <message>
   <source>gusts of %1 are above %2, over %3</source>
   <translation>Böen von %1 liegen über %2, über %3</translation>
  </message>
  <message>
   <source>a mean wind of %1 is above %2, over %3</source>
   <translation>ein mittlerer Wind von %1 liegt über %2, über %3</translation>
  </message>
  <message>
   <source>the last wind was read by somebody who may not</source>
   <translation>den letzten Wind hat jemand gemessen, der es nicht darf</translation>
  </message>
  <message>
   <source>mean %1, gusts %2, by %3</source>
   <translation>Mittel %1, Böen %2, von %3</translation>
  </message>
  <message>
   <source>no wind over %1 was read yet</source>
   <translation>noch kein Wind über %1 gemessen</translation>
  </message>
  <message>
   <source>nothing is known</source>
   <translation>nichts ist bekannt</translation>
  </message>
  <message>
   <source>no pin is planned, so there is nothing that could fit</source>
   <translation>kein Stift ist geplant, also kann nichts passen</translation>
  </message>
  <message>
   <source>all %1 planned pins fit</source>
   <translation>alle %1 geplanten Stifte passen</translation>
  </message>
  <message>
   <source>%1 of %2 planned pins fit, %3 is waived by name</source>
   <translation>%1 von %2 geplanten Stiften passen, von %3 ist namentlich abgesehen</translation>
  </message>
  <message>
   <source>%1 of %2 planned pins fit, %3 are waived by name</source>
   <translation>%1 von %2 geplanten Stiften passen, von %3 ist namentlich abgesehen</translation>
  </message>
  <message>
   <source>of %1 planned pins %2</source>
   <translation>von %1 geplanten Stiften: %2</translation>
  </message>
  <message>
   <source>%1 is unread</source>
   <translation>%1 ungelesen</translation>
  </message>
  <message>
   <source>%1 are unread</source>
   <translation>%1 ungelesen</translation>
  </message>
  <message>
   <source>%1 was read too long ago</source>
   <translation>%1 vor zu langer Zeit gelesen</translation>
  </message>
  <message>
   <source>%1 were read too long ago</source>
   <translation>%1 vor zu langer Zeit gelesen</translation>
  </message>
  <message>
   <source>%1 are unread, %2</source>
   <translation>%1 ungelesen, %2</translation>
  </message>
  <message>
   <source>%1 is unread, %2</source>
   <translation>%1 ungelesen, %2</translation>
  </message>
  <message>
   <source>%1 was read too long ago, %2</source>
   <translation>%1 vor zu langer Zeit gelesen, %2</translation>
  </message>
  <message>
   <source>%1 were read too long ago, %2</source>
   <translation>%1 vor zu langer Zeit gelesen, %2</translation>
  </message>
  <message>
   <source>%1 does not fit (%2)</source>
   <translation>%1 passt nicht (%2)</translation>
  </message>
  <message>
   <source>%1 do not fit (%2)</source>
   <translation>%1 passen nicht (%2)</translation>
  </message>
  <message>
   <source>%1 fits</source>
   <translation>%1 passt</translation>
  </message>
  <message>
   <source>%1 doubtful</source>
   <translation>%1 zweifelhaft</translation>
  </message>
  <message>
   <source>%1 low</source>
   <translation>%1 niedrig</translation>
  </message>
  <message>
   <source>%1 high</source>
   <translation>%1 hoch</translation>
  </message>
  <message>
   <source>%1 open</source>
   <translation>%1 offen</translation>
  </message>
  <message>
   <source>%1 short</source>
   <translation>%1 kurzgeschlossen</translation>
  </message>
  <message>
   <source>%1 unsteady</source>
   <translation>%1 unruhig</translation>
  </message>
  <message>
   <source>%1 stray</source>
   <translation>%1 fremd</translation>
  </message>
  <message>
   <source>%1 unread</source>
   <translation>%1 ungelesen</translation>
  </message>
  <message>
   <source>%1 stale</source>
   <translation>%1 veraltet</translation>
  </message>
  <message>
   <source>was found: %1</source>
   <translation>gefunden: %1</translation>
  </message>
  <message>
   <source>%1 is below %2</source>
   <translation>%1 liegt unter %2</translation>
  </message>
  <message>
   <source>%1 is above %2</source>
   <translation>%1 liegt über %2</translation>
  </message>
  <message>
   <source>%1; %2</source>
   <translation>%1; %2</translation>
  </message>
  <message>
   <source>the clock went back over a restart, so its age is not known</source>
   <translation>die Uhr ging über einen Neustart zurück, daher ist das Alter nicht bekannt</translation>
  </message>
  <message>
   <source>the wall clock stepped</source>
   <translation>die Uhr wurde verstellt</translation>
  </message>
  <message>
   <source>the machine was started anew</source>
   <translation>der Rechner wurde neu gestartet</translation>
  </message>
  <message>
   <source>the machine slept</source>
   <translation>der Rechner hat geschlafen</translation>
  </message>
  <message>
   <source>comes up again after the restart</source>
   <translation>kommt nach dem Neustart noch einmal</translation>
  </message>
  <message>
   <source>comes up again after a break</source>
   <translation>kommt nach einer Unterbrechung noch einmal</translation>
  </message>
  <message>
   <source>comes up again after the hold</source>
   <translation>kommt nach dem Halt noch einmal</translation>
  </message>
  <message>
   <source>a pin was read after the release</source>
   <translation>ein Stift wurde nach der Freigabe gemessen</translation>
  </message>
  <message>
   <source>thunder was heard</source>
   <translation>Donner wurde gehört</translation>
  </message>
  <message>
   <source>pins were hooked up anew</source>
   <translation>Stifte wurden neu angeschlossen</translation>
  </message>
  <message>
   <source>the show was moved to %1</source>
   <translation>die Show wurde auf %1 verlegt</translation>
  </message>
  <message>
   <source>a hold was called</source>
   <translation>ein Halt wurde gerufen</translation>
  </message>
  <message>
   <source>%1 called a hold</source>
   <translation>%1 rief einen Halt</translation>
  </message>
  <message>
   <source>%1 called a hold: %2</source>
   <translation>%1 rief einen Halt: %2</translation>
  </message>
  <message>
   <source>%1 went into the field</source>
   <translation>%1 ging ins Feld</translation>
  </message>
  <message>
   <source>%1 went into the field: %2</source>
   <translation>%1 ging ins Feld: %2</translation>
  </message>
  <message>
   <source>%1 went to %2</source>
   <translation>%1 ging an %2</translation>
  </message>
  <message>
   <source>%1 withdrew it</source>
   <translation>%1 zog sie zurück</translation>
  </message>
  <message>
   <source>%1 withdrew it: %2</source>
   <translation>%1 zog sie zurück: %2</translation>
  </message>
  <message>
   <source>the record was closed</source>
   <translation>das Protokoll wurde geschlossen</translation>
  </message>
  <message>
   <source>the record was closed: %1</source>
   <translation>das Protokoll wurde geschlossen: %1</translation>
  </message>
  <message>
   <source>every item holds</source>
   <translation>jeder Punkt hält</translation>
  </message>
  <message>
   <source>stands until %1 expires</source>
   <translation>steht, bis %1 abläuft</translation>
  </message>
  <message>
   <source>no stage is part of the release</source>
   <translation>kein Abschnitt gehört zur Freigabe</translation>
  </message>
  <message>
   <source>the pause after "%1" is not closed</source>
   <translation>die Pause nach „%1“ ist nicht geschlossen</translation>
  </message>
  <message>
   <source>%1 is open: %2</source>
   <translation>%1 ist offen: %2</translation>
  </message>
  <message>
   <source>%1 is due: %2</source>
   <translation>%1 ist fällig: %2</translation>
  </message>
  <message>
   <source>%1 is expired: %2</source>
   <translation>%1 ist abgelaufen: %2</translation>
  </message>
  <message>
   <source>%1 is broken: %2</source>
   <translation>%1 ist gebrochen: %2</translation>
  </message>
  <message>
   <source>%1 is refused: %2</source>
   <translation>%1 ist abgelehnt: %2</translation>
  </message>
  <message>
   <source>every item holds to the end of the show at %1</source>
   <translation>jeder Punkt hält bis zum Ende der Show um %1</translation>
  </message>
  <message>
   <source>a release for %1 is possible: begin %2 by %3</source>
   <translation>eine Freigabe für %1 ist möglich: %2 bis %3 beginnen</translation>
  </message>
  <message>
   <source>no show time is set</source>
   <translation>keine Showzeit ist gesetzt</translation>
  </message>
  <message>
   <source>the show of %1 was released; nothing has to begin before it any more</source>
   <translation>die Show von %1 wurde freigegeben; davor muss nichts mehr beginnen</translation>
  </message>
  <message>
   <source>%1 lasts only %2: answered by %3 it would not hold to the end of the show at %4</source>
   <translation>%1 hält nur %2: bis %3 beantwortet, hielte es nicht bis zum Ende der Show um %4</translation>
  </message>
  <message>
   <source>%1 cannot be done before %2, and had to be by %3: move the show by %4 or more</source>
   <translation>%1 ist nicht vor %2 zu schaffen und hätte bis %3 sein müssen: die Show um %4 oder mehr verschieben</translation>
  </message>
  <message>
   <source>as planned, %1 expires %2 before the show: answer it again between %3 and %4</source>
   <translation>wie geplant läuft %1 %2 vor der Show ab: zwischen %3 und %4 noch einmal beantworten</translation>
  </message>
  <message>
   <source>as planned, %1 expires %2 before the end of the show: answer it again between %3 and %4</source>
   <translation>wie geplant läuft %1 %2 vor dem Ende der Show ab: zwischen %3 und %4 noch einmal beantworten</translation>
  </message>
  <message>
   <source>%1: all %2 distances are kept</source>
   <translation>%1: alle %2 Abstände sind eingehalten</translation>
  </message>
  <message>
   <source>%1: %2, and %3 more</source>
   <translation>%1: %2, und %3 mehr</translation>
  </message>
  <message>
   <source>%1 lies inside %2, or too near its edge to tell</source>
   <translation>%1 liegt in %2, oder zu nah am Rand, um es zu sagen</translation>
  </message>
  <message>
   <source>%1 does not say how far %2 must be from %3: %4</source>
   <translation>%1 sagt nicht, wie weit %2 von %3 sein muss: %4</translation>
  </message>
  <message>
   <source>%1 is %2 from %3; %4 asks for %5</source>
   <translation>%1 ist %2 von %3; %4 verlangt %5</translation>
  </message>
  <message>
   <source>%1 lies outside the ground that is kept clear</source>
   <translation>%1 liegt außerhalb der freigehaltenen Fläche</translation>
  </message>
  <message>
   <source>the site does not show where %1 is</source>
   <translation>das Gelände zeigt nicht, wo %1 ist</translation>
  </message>
  <message>
   <source>the site shows no audience to measure to</source>
   <translation>das Gelände zeigt kein Publikum, zu dem zu messen wäre</translation>
  </message>
  <message>
   <source>%1 mm is above its largest calibre, %2 mm</source>
   <translation>%1 mm liegt über ihrem größten Kaliber, %2 mm</translation>
  </message>
  <message>
   <source>it has cues without a calibre, and the table no distance for those</source>
   <translation>es hat Cues ohne Kaliber, und die Tabelle keinen Abstand für sie</translation>
  </message>
  <message>
   <source>%1 over range</source>
   <translation>%1 über dem Bereich</translation>
  </message>
  <message>
   <source>%1 %2 ohm</source>
   <translation>%1 %2 Ohm</translation>
  </message>
  <message>
   <source>%1 answered %2: %3</source>
   <translation>%1 beantwortete %2: %3</translation>
  </message>
  <message>
   <source>%1 is enrolled as %2</source>
   <translation>%1 ist eingetragen als %2</translation>
  </message>
  <message>
   <source>%1 looked and confirms: %2</source>
   <translation>%1 hat hingesehen und bestätigt: %2</translation>
  </message>
  <message>
   <source>%1 closed the pause after "%2"</source>
   <translation>%1 schloss die Pause nach „%2“</translation>
  </message>
  <message>
   <source>%1 set the show for %2</source>
   <translation>%1 setzte die Show auf %2</translation>
  </message>
  <message>
   <source>wind: mean %1 m/s, gusts %2 m/s over %3, by %4</source>
   <translation>Wind: Mittel %1 m/s, Böen %2 m/s über %3, von %4</translation>
  </message>
  <message>
   <source>the instrument</source>
   <translation>dem Gerät</translation>
  </message>
  <message>
   <source>instrument</source>
   <translation>Gerät</translation>
  </message>
  <message>
   <source>somebody</source>
   <translation>jemand</translation>
  </message>
  <message>
   <source>thunder was heard, %1 s after its flash</source>
   <translation>Donner wurde gehört, %1 s nach dem Blitz</translation>
  </message>
  <message>
   <source>%1 is out of the field</source>
   <translation>%1 ist aus dem Feld</translation>
  </message>
  <message>
   <source>%1 hung a tag</source>
   <translation>%1 hängte eine Marke auf</translation>
  </message>
  <message>
   <source>%1 has the tag back</source>
   <translation>%1 hat die Marke zurück</translation>
  </message>
  <message>
   <source>%1 says that %2 is out of the field</source>
   <translation>%1 sagt, dass %2 aus dem Feld ist</translation>
  </message>
  <message>
   <source>%1 says that %2 is out of the field: %3</source>
   <translation>%1 sagt, dass %2 aus dem Feld ist: %3</translation>
  </message>
  <message>
   <source>%1 says that %2 has the tag back</source>
   <translation>%1 sagt, dass %2 die Marke zurückhat</translation>
  </message>
  <message>
   <source>%1 says that %2 has the tag back: %3</source>
   <translation>%1 sagt, dass %2 die Marke zurückhat: %3</translation>
  </message>
  <message>
   <source>%1 says that %2 hung a tag</source>
   <translation>%1 sagt, dass %2 eine Marke aufhängte</translation>
  </message>
  <message>
   <source>%1 signed for the %2 that %3 holds</source>
   <translation>%1 unterschrieb für: %2, noch bei %3</translation>
  </message>
  <message>
   <source>%1 gave the %2 to %3</source>
   <translation>%1 übergab an %3: %2</translation>
  </message>
  <message>
   <source>%1 put the %2 into the %3</source>
   <translation>%1 legte ab in %3: %2</translation>
  </message>
  <message>
   <source>%1 took the %2 out of the %3</source>
   <translation>%1 nahm aus %3: %2</translation>
  </message>
  <message>
   <source>%1 lifted the hold</source>
   <translation>%1 hob den Halt auf</translation>
  </message>
  <message>
   <source>%1 lifted the hold: %2</source>
   <translation>%1 hob den Halt auf: %2</translation>
  </message>
  <message>
   <source>%1 waives %2, which reads %3</source>
   <translation>%1 sieht ab von %2, Befund: %3</translation>
  </message>
  <message>
   <source>%1 waives %2, which reads %3: %4</source>
   <translation>%1 sieht ab von %2, Befund %3: %4</translation>
  </message>
  <message>
   <source>%1 waives %2</source>
   <translation>%1 sieht ab von %2</translation>
  </message>
  <message>
   <source>%1 waives %2: %3</source>
   <translation>%1 sieht ab von %2: %3</translation>
  </message>
  <message>
   <source>%1 signed the release</source>
   <translation>%1 unterschrieb die Freigabe</translation>
  </message>
  <message>
   <source>%1 withdrew the release</source>
   <translation>%1 zog die Freigabe zurück</translation>
  </message>
  <message>
   <source>%1 withdrew the release: %2</source>
   <translation>%1 zog die Freigabe zurück: %2</translation>
  </message>
  <message>
   <source>hooked up anew: %1</source>
   <translation>neu angeschlossen: %1</translation>
  </message>
  <message>
   <source>hooked up anew: %1 (%2)</source>
   <translation>neu angeschlossen: %1 (%2)</translation>
  </message>
  <message>
   <source>the whole field</source>
   <translation>das ganze Feld</translation>
  </message>
  <message>
   <source>module %1 rail %2</source>
   <translation>Modul %1 Schiene %2</translation>
  </message>
  <message>
   <source>module %1</source>
   <translation>Modul %1</translation>
  </message>
  <message>
   <source>a line was not taken: %1</source>
   <translation>eine Zeile wurde nicht angenommen: %1</translation>
  </message>
  <message>
   <source>the field reads: %1</source>
   <translation>Befund des Feldes: %1</translation>
  </message>
  <message>
   <source>%1 states: %2</source>
   <translation>%1 erklärt: %2</translation>
  </message>
  <message>
   <source>the record was opened, with the checklist "%1"</source>
   <translation>das Protokoll wurde eröffnet, mit der Prüfliste „%1“</translation>
  </message>
  <message>
   <source>the program was started anew</source>
   <translation>das Programm wurde neu gestartet</translation>
  </message>
  <message>
   <source>the machine slept for %1</source>
   <translation>der Rechner hat %1 geschlafen</translation>
  </message>
  <message>
   <source>the wall clock stepped back by %1</source>
   <translation>die Uhr wurde um %1 zurückgestellt</translation>
  </message>
  <message>
   <source>the wall clock stepped on by %1</source>
   <translation>die Uhr wurde um %1 vorgestellt</translation>
  </message>
  <message>
   <source>a crash left lines that were never acknowledged; they are kept in %1</source>
   <translation>ein Absturz hinterließ nie bestätigte Zeilen; sie liegen in %1</translation>
  </message>
  <message>
   <source>a witness's signature that cannot be read</source>
   <translation>die Unterschrift eines Zeugen, die nicht zu lesen ist</translation>
  </message>
  <message>
   <source>%1 signed as a witness that the first %2 entries stood at %3</source>
   <translation>%1 bezeugte: die ersten %2 Einträge standen um %3</translation>
  </message>
  <message>
   <source>a time-stamp that does not hold</source>
   <translation>ein Zeitstempel, der nicht hält</translation>
  </message>
  <message>
   <source>%1 signed that the first %2 entries stood at %3 (RFC 3161 time-stamp)</source>
   <translation>%1 bestätigte: die ersten %2 Einträge standen um %3 (Zeitstempel nach RFC 3161)</translation>
  </message>
  <message>
   <source>the checksum is missing</source>
   <translation>die Prüfsumme fehlt</translation>
  </message>
  <message>
   <source>the checksum is %1, the line itself gives %2</source>
   <translation>die Prüfsumme ist %1, die Zeile selbst ergibt %2</translation>
  </message>
  <message>
   <source>the unit %1 is not one of resistance</source>
   <translation>die Einheit %1 ist keine des Widerstands</translation>
  </message>
  <message>
   <source>the tester says that it has no number</source>
   <translation>der Prüfer sagt, dass er keine Zahl hat</translation>
  </message>
  <message>
   <source>the value %1 is neither a number nor a word for above range</source>
   <translation>der Wert %1 ist weder eine Zahl noch ein Wort für „über dem Bereich“</translation>
  </message>
  <message>
   <source>the value %1 is outside -1000 ohm .. 1e9 ohm</source>
   <translation>der Wert %1 liegt außerhalb -1000 Ohm .. 1e9 Ohm</translation>
  </message>
  <message>
   <source>the line is longer than 4096 bytes</source>
   <translation>die Zeile ist länger als 4096 Byte</translation>
  </message>
  <message>
   <source>the line is blank</source>
   <translation>die Zeile ist leer</translation>
  </message>
  <message>
   <source>the line has a NUL byte inside: a byte was damaged on the way</source>
   <translation>die Zeile enthält ein NUL-Byte: ein Byte wurde unterwegs beschädigt</translation>
  </message>
  <message>
   <source>the line is not in the form that the tester profile describes</source>
   <translation>die Zeile hat nicht die Form, die das Prüferprofil beschreibt</translation>
  </message>
  <message>
   <source>the line number %1 is not a whole number</source>
   <translation>die Zeilennummer %1 ist keine ganze Zahl</translation>
  </message>
  <message>
   <source>the %1 is not a number from 1 to 9999</source>
   <translation>%1 ist keine Zahl von 1 bis 9999</translation>
  </message>
  <message>
   <source>the line was cut off when the port went away</source>
   <translation>die Zeile brach ab, als der Anschluss wegfiel</translation>
  </message>
  <message>
   <source>the first line after the port was opened may lack its beginning</source>
   <translation>der ersten Zeile nach dem Öffnen des Anschlusses kann der Anfang fehlen</translation>
  </message>
  <message>
   <source>the checksum is missing, and most lines of this tester carry one</source>
   <translation>die Prüfsumme fehlt, und die meisten Zeilen dieses Prüfers haben eine</translation>
  </message>
  <message>
   <source>"%1" is none of the states that %2 can be in</source>
   <translation>„%1“ ist keiner der Zustände, die %2 haben kann</translation>
  </message>
  <message>
   <source>choose what was seen: %1</source>
   <translation>wählen, was zu sehen war: %1</translation>
  </message>
  <message>
   <source>the number of groups looked at is not the number there are</source>
   <translation>die Zahl der angesehenen Gruppen ist nicht die der vorhandenen</translation>
  </message>
  <message>
   <source>walk the whole list of pins that read alike</source>
   <translation>die ganze Liste gleich lesender Stifte abgehen</translation>
  </message>
  <message>
   <source>%1 is answered by a number</source>
   <translation>%1 wird mit einer Zahl beantwortet</translation>
  </message>
  <message>
   <source>give it in %1</source>
   <translation>in %1 angeben</translation>
  </message>
  <message>
   <source>%1 is answered by what was seen or heard</source>
   <translation>%1 wird mit dem beantwortet, was zu sehen oder zu hören war</translation>
  </message>
  <message>
   <source>write it in one line, in your own words</source>
   <translation>in einer Zeile schreiben, mit eigenen Worten</translation>
  </message>
  <message>
   <source>%1 needs a file's SHA-256</source>
   <translation>%1 braucht den SHA-256 einer Datei</translation>
  </message>
  <message>
   <source>choose the file</source>
   <translation>die Datei wählen</translation>
  </message>
  <message>
   <source>%1 rests on %2, which is %3: %4</source>
   <translation>%1 beruht auf %2, und das ist %3: %4</translation>
  </message>
  <message>
   <source>open</source>
   <translation>offen</translation>
  </message>
  <message>
   <source>due</source>
   <translation>fällig</translation>
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
   <translation>abgelehnt</translation>
  </message>
  <message>
   <source>see to that first</source>
   <translation>zuerst darum kümmern</translation>
  </message>
  <message>
   <source>%1 is not answered by anyone: it follows from what is</source>
   <translation>%1 beantwortet niemand: es folgt aus dem, was ist</translation>
  </message>
  <message>
   <source>read the wind and enter that</source>
   <translation>den Wind messen und eintragen</translation>
  </message>
  <message>
   <source>see to what it is about, and it will hold by itself</source>
   <translation>sich um die Sache kümmern, dann hält es von selbst</translation>
  </message>
  <message>
   <source>it does not say what it confirms</source>
   <translation>es sagt nicht, was es bestätigt</translation>
  </message>
  <message>
   <source>name the entry</source>
   <translation>den Eintrag nennen</translation>
  </message>
  <message>
   <source>entry %1 waits for no second signature</source>
   <translation>Eintrag %1 wartet auf keine zweite Unterschrift</translation>
  </message>
  <message>
   <source>look at the list of those that wait; what was broken since is done anew</source>
   <translation>die Liste der wartenden ansehen; was seither gebrochen ist, wird neu gemacht</translation>
  </message>
  <message>
   <source>one person cannot sign twice</source>
   <translation>eine Person kann nicht zweimal unterschreiben</translation>
  </message>
  <message>
   <source>let somebody else look and sign</source>
   <translation>jemand anderen hinsehen und unterschreiben lassen</translation>
  </message>
  <message>
   <source>what is confirmed is not what was claimed: %1</source>
   <translation>bestätigt wird nicht, was behauptet wurde: %1</translation>
  </message>
  <message>
   <source>look again and confirm what was claimed, or let it be claimed anew</source>
   <translation>noch einmal hinsehen und das Behauptete bestätigen, oder neu behaupten lassen</translation>
  </message>
  <message>
   <source>the first signature is too old to be confirmed</source>
   <translation>die erste Unterschrift ist zu alt, um bestätigt zu werden</translation>
  </message>
  <message>
   <source>sign both anew</source>
   <translation>beide neu unterschreiben</translation>
  </message>
  <message>
   <source>the checklist has no such stage: %1</source>
   <translation>die Prüfliste hat keinen solchen Abschnitt: %1</translation>
  </message>
  <message>
   <source>choose one of these: %1</source>
   <translation>eines davon wählen: %1</translation>
  </message>
  <message>
   <source>%1 has closed this pause already</source>
   <translation>%1 hat diese Pause schon geschlossen</translation>
  </message>
  <message>
   <source>go on with the next stage</source>
   <translation>mit dem nächsten Abschnitt weitermachen</translation>
  </message>
  <message>
   <source>the release itself closes this stage</source>
   <translation>die Freigabe selbst schließt diesen Abschnitt</translation>
  </message>
  <message>
   <source>sign the release</source>
   <translation>die Freigabe unterschreiben</translation>
  </message>
  <message>
   <source>see to it first, or let the lead waive it with a reason</source>
   <translation>zuerst darum kümmern, oder der Leiter sieht mit Grund davon ab</translation>
  </message>
  <message>
   <source>the checklist asks nobody for the wind</source>
   <translation>die Prüfliste fragt niemanden nach dem Wind</translation>
  </message>
  <message>
   <source>keep it as a note, or begin a record with a checklist that has a wind item</source>
   <translation>als Notiz halten, oder ein Protokoll mit einer Prüfliste beginnen, die einen Windpunkt hat</translation>
  </message>
  <message>
   <source>a mean wind is over 10 min or 2 min</source>
   <translation>ein mittlerer Wind gilt über 10 min oder 2 min</translation>
  </message>
  <message>
   <source>give one of the two</source>
   <translation>eines von beiden angeben</translation>
  </message>
  <message>
   <source>a wind has a mean, and gusts no lower than it, up to 120 m/s</source>
   <translation>ein Wind hat ein Mittel, und Böen nicht darunter, bis 120 m/s</translation>
  </message>
  <message>
   <source>give both in m/s, and the highest 3 s mean as the gust</source>
   <translation>beide in m/s angeben, als Böe das höchste Mittel über 3 s</translation>
  </message>
  <message>
   <source>it does not say when the show is</source>
   <translation>es sagt nicht, wann die Show ist</translation>
  </message>
  <message>
   <source>give a date and a time of day</source>
   <translation>Datum und Uhrzeit angeben</translation>
  </message>
  <message>
   <source>no clock on the wall is so far from UTC</source>
   <translation>keine Uhr liegt so weit von UTC</translation>
  </message>
  <message>
   <source>give its distance from UTC, 14 h at most</source>
   <translation>den Abstand zu UTC angeben, höchstens 14 h</translation>
  </message>
  <message>
   <source>there is no such key: %1</source>
   <translation>es gibt keinen solchen Schlüssel: %1</translation>
  </message>
  <message>
   <source>begin a record with a checklist that has one</source>
   <translation>ein Protokoll mit einer Prüfliste beginnen, die einen hat</translation>
  </message>
  <message>
   <source>let its owner take it back first</source>
   <translation>zuerst nimmt ihr Besitzer sie zurück</translation>
  </message>
  <message>
   <source>%1 does not hold this key, %2 does</source>
   <translation>%1 hat diesen Schlüssel nicht, sondern %2</translation>
  </message>
  <message>
   <source>%1 does not hold this key, the %2 does</source>
   <translation>%1 hat diesen Schlüssel nicht, er liegt in: %2</translation>
  </message>
  <message>
   <source>let the holder do it</source>
   <translation>der Inhaber soll es tun</translation>
  </message>
  <message>
   <source>take it from there first</source>
   <translation>zuerst von dort nehmen</translation>
  </message>
  <message>
   <source>take it from there</source>
   <translation>von dort nehmen</translation>
  </message>
  <message>
   <source>let them come out and sign out first</source>
   <translation>zuerst herauskommen und sich abmelden lassen</translation>
  </message>
  <message>
   <source>a hold is on: %1</source>
   <translation>ein Halt besteht: %1</translation>
  </message>
  <message>
   <source>let the lead lift it first</source>
   <translation>zuerst hebt der Leiter ihn auf</translation>
  </message>
  <message>
   <source>%1 is in the %2, in nobody's hand</source>
   <translation>%1 liegt in %2, in niemandes Hand</translation>
  </message>
  <message>
   <source>%1 holds this key already</source>
   <translation>%1 hat diesen Schlüssel schon</translation>
  </message>
  <message>
   <source>let somebody else sign for it</source>
   <translation>jemand anderen dafür unterschreiben lassen</translation>
  </message>
  <message>
   <source>%1 holds this key</source>
   <translation>%1 hat diesen Schlüssel</translation>
  </message>
  <message>
   <source>sign for it from them</source>
   <translation>von dort übernehmen und unterschreiben</translation>
  </message>
  <message>
   <source>the receiver has not signed for it</source>
   <translation>der Empfänger hat nicht dafür unterschrieben</translation>
  </message>
  <message>
   <source>let the receiver sign first</source>
   <translation>zuerst unterschreibt der Empfänger</translation>
  </message>
  <message>
   <source>the key has no such place: %1</source>
   <translation>der Schlüssel hat keinen solchen Ort: %1</translation>
  </message>
  <message>
   <source>let them hand it over</source>
   <translation>übergeben lassen</translation>
  </message>
  <message>
   <source>the key is in the %1</source>
   <translation>der Schlüssel liegt in: %1</translation>
  </message>
  <message>
   <source>an enrolment needs a name, a role and a key</source>
   <translation>eine Eintragung braucht Name, Rolle und Schlüssel</translation>
  </message>
  <message>
   <source>give all three</source>
   <translation>alle drei angeben</translation>
  </message>
  <message>
   <source>1,000 people are enrolled, and a day takes no more</source>
   <translation>1.000 Personen sind eingetragen, mehr fasst ein Tag nicht</translation>
  </message>
  <message>
   <source>begin another record</source>
   <translation>ein anderes Protokoll beginnen</translation>
  </message>
  <message>
   <source>%1 is enrolled as %2 already</source>
   <translation>%1 ist schon als %2 eingetragen</translation>
  </message>
  <message>
   <source>let them sign as that</source>
   <translation>als das unterschreiben lassen</translation>
  </message>
  <message>
   <source>%1 cannot be enrolled: name or key is that of %2</source>
   <translation>%1 kann nicht eingetragen werden: Name oder Schlüssel gehört %2</translation>
  </message>
  <message>
   <source>one name has one key: give the other person another name, or the key of this name</source>
   <translation>ein Name hat einen Schlüssel: der anderen Person einen anderen Namen geben, oder den Schlüssel dieses Namens</translation>
  </message>
  <message>
   <source>it does not say who</source>
   <translation>es sagt nicht, wer</translation>
  </message>
  <message>
   <source>give the name</source>
   <translation>den Namen angeben</translation>
  </message>
  <message>
   <source>%1 is not in the field</source>
   <translation>%1 ist nicht im Feld</translation>
  </message>
  <message>
   <source>%1 has no tag out</source>
   <translation>%1 hat keine Marke hängen</translation>
  </message>
  <message>
   <source>look at who is out, and write the name as it stands there</source>
   <translation>nachsehen, wer draußen ist, und den Namen so schreiben, wie er dort steht</translation>
  </message>
  <message>
   <source>only the owner can do this alone</source>
   <translation>allein kann das nur der Besitzer</translation>
  </message>
  <message>
   <source>give a reason, and let a second person sign</source>
   <translation>einen Grund angeben und eine zweite Person unterschreiben lassen</translation>
  </message>
  <message>
   <source>the tag of %1 is back: %2</source>
   <translation>die Marke von %1 ist zurück: %2</translation>
  </message>
  <message>
   <source>%1 is out of the field: %2</source>
   <translation>%1 ist aus dem Feld: %2</translation>
  </message>
  <message>
   <source>no hold is on</source>
   <translation>kein Halt besteht</translation>
  </message>
  <message>
   <source>go on</source>
   <translation>weitermachen</translation>
  </message>
  <message>
   <source>another hold was called since: %1</source>
   <translation>seither wurde ein weiterer Halt gerufen: %1</translation>
  </message>
  <message>
   <source>see to that one too, and lift both</source>
   <translation>auch darum kümmern, und beide aufheben</translation>
  </message>
  <message>
   <source>a hold is lifted with a reason</source>
   <translation>ein Halt wird mit einem Grund aufgehoben</translation>
  </message>
  <message>
   <source>write why</source>
   <translation>schreiben, warum</translation>
  </message>
  <message>
   <source>a release stands already</source>
   <translation>eine Freigabe steht schon</translation>
  </message>
  <message>
   <source>take it back first if it must be signed anew</source>
   <translation>zuerst zurücknehmen, wenn neu unterschrieben werden muss</translation>
  </message>
  <message>
   <source>the release</source>
   <translation>die Freigabe</translation>
  </message>
  <message>
   <source>nothing is released, so nothing can be taken back</source>
   <translation>nichts ist freigegeben, also ist nichts zurückzunehmen</translation>
  </message>
  <message>
   <source>call a hold if the show has to stop</source>
   <translation>einen Halt rufen, wenn die Show stoppen muss</translation>
  </message>
  <message>
   <source>a waiver needs a reason</source>
   <translation>ein Absehen braucht einen Grund</translation>
  </message>
  <message>
   <source>%1 cannot be waived by anyone</source>
   <translation>von %1 kann niemand absehen</translation>
  </message>
  <message>
   <source>see to it that it holds</source>
   <translation>dafür sorgen, dass es hält</translation>
  </message>
  <message>
   <source>%1 needs no waiver: it holds</source>
   <translation>von %1 muss nicht abgesehen werden: es hält</translation>
  </message>
  <message>
   <source>%1 waived: %2</source>
   <translation>erlassen, %1: %2</translation>
  </message>
  <message>
   <source>the plan has no such pin: %1</source>
   <translation>der Plan hat keinen solchen Stift: %1</translation>
  </message>
  <message>
   <source>write it as M01/R1/P05</source>
   <translation>als M01/R1/P05 schreiben</translation>
  </message>
  <message>
   <source>the pin fits and needs no waiver</source>
   <translation>der Stift passt, von nichts ist abzusehen</translation>
  </message>
  <message>
   <source>%1 reads %2 by now</source>
   <translation>%1 liest inzwischen: %2</translation>
  </message>
  <message>
   <source>look at it again, and waive that if it must be</source>
   <translation>noch einmal ansehen, und davon absehen, wenn es sein muss</translation>
  </message>
  <message>
   <source>it is not signed</source>
   <translation>es ist nicht unterschrieben</translation>
  </message>
  <message>
   <source>sign it</source>
   <translation>unterschreiben</translation>
  </message>
  <message>
   <source>the checklist has no such item: %1</source>
   <translation>die Prüfliste hat keinen solchen Punkt: %1</translation>
  </message>
  <message>
   <source>write its id as the checklist has it</source>
   <translation>seine Kennung so schreiben, wie die Prüfliste sie hat</translation>
  </message>
  <message>
   <source>"%1" has not begun: nothing was released yet</source>
   <translation>„%1“ hat nicht begonnen: noch ist nichts freigegeben</translation>
  </message>
  <message>
   <source>"%1" has not begun: the pause before it is not closed</source>
   <translation>„%1“ hat nicht begonnen: die Pause davor ist nicht geschlossen</translation>
  </message>
  <message>
   <source>it begins with the release</source>
   <translation>es beginnt mit der Freigabe</translation>
  </message>
  <message>
   <source>finish "%1" and close its pause</source>
   <translation>„%1“ beenden und die Pause schließen</translation>
  </message>
  <message>
   <source>the gate is shut: %1</source>
   <translation>das Tor ist zu: %1</translation>
  </message>
  <message>
   <source>see to that and %1 more thing</source>
   <translation>darum und um %1 weitere Sache kümmern</translation>
  </message>
  <message>
   <source>see to that and %1 more things</source>
   <translation>darum und um %1 weitere Sachen kümmern</translation>
  </message>
  <message>
   <source>nobody is enrolled as %1 under the name %2</source>
   <translation>niemand ist als %1 unter dem Namen %2 eingetragen</translation>
  </message>
  <message>
   <source>(no role)</source>
   <translation>(keine Rolle)</translation>
  </message>
  <message>
   <source>(no name)</source>
   <translation>(kein Name)</translation>
  </message>
  <message>
   <source>enrol the person first</source>
   <translation>die Person zuerst eintragen</translation>
  </message>
  <message>
   <source>%1 may not do this as %2</source>
   <translation>%1 darf das als %2 nicht tun</translation>
  </message>
  <message>
   <source>let one of the crew do it</source>
   <translation>jemanden aus der Mannschaft es tun lassen</translation>
  </message>
  <message>
   <source>let a %1 do it</source>
   <translation>das tut: %1</translation>
  </message>
  <message>
   <source>a key cannot be named so</source>
   <translation>so kann ein Schlüssel nicht heißen</translation>
  </message>
  <message>
   <source>write the name in letters, with single spaces between</source>
   <translation>den Namen in Buchstaben schreiben, mit einzelnen Leerzeichen</translation>
  </message>
  <message>
   <source>there is no key of %1</source>
   <translation>es gibt keinen Schlüssel von %1</translation>
  </message>
  <message>
   <source>make one with: walkdown crew add</source>
   <translation>einen machen mit: walkdown crew add</translation>
  </message>
  <message>
   <source>there is no such record</source>
   <translation>es gibt kein solches Protokoll</translation>
  </message>
  <message>
   <source>open a new one with its show</source>
   <translation>ein neues mit seiner Show eröffnen</translation>
  </message>
  <message>
   <source>something else was written at the same moment; look again</source>
   <translation>im selben Moment wurde etwas anderes geschrieben; noch einmal hinsehen</translation>
  </message>
  <message>
   <source>this is no key file, or it was changed</source>
   <translation>das ist keine Schlüsseldatei, oder sie wurde verändert</translation>
  </message>
  <message>
   <source>take a copy of it that you kept, or make a new key</source>
   <translation>eine aufbewahrte Kopie nehmen, oder einen neuen Schlüssel machen</translation>
  </message>
  <message>
   <source>the key cannot be read</source>
   <translation>der Schlüssel kann nicht gelesen werden</translation>
  </message>
  <message>
   <source>the key cannot be kept</source>
   <translation>der Schlüssel kann nicht abgelegt werden</translation>
  </message>
  <message>
   <source>there is a key of this name already</source>
   <translation>einen Schlüssel dieses Namens gibt es schon</translation>
  </message>
  <message>
   <source>choose another name</source>
   <translation>einen anderen Namen wählen</translation>
  </message>
  <message>
   <source>the passphrase is too short</source>
   <translation>die Passphrase ist zu kurz</translation>
  </message>
  <message>
   <source>take at least 8 characters</source>
   <translation>mindestens 8 Zeichen nehmen</translation>
  </message>
  <message>
   <source>the passphrase is wrong</source>
   <translation>die Passphrase ist falsch</translation>
  </message>
  <message>
   <source>type it again</source>
   <translation>noch einmal eingeben</translation>
  </message>
  <message>
   <source>make room on the disk and resume the record; what was acknowledged is kept</source>
   <translation>auf der Platte Platz schaffen und das Protokoll fortsetzen; was bestätigt war, ist erhalten</translation>
  </message>
  <message>
   <source>choose a folder that you may write to</source>
   <translation>einen Ordner wählen, in den geschrieben werden darf</translation>
  </message>
  <message>
   <source>the record cannot be written</source>
   <translation>das Protokoll kann nicht geschrieben werden</translation>
  </message>
  <message>
   <source>the record cannot be synced</source>
   <translation>das Protokoll kann nicht auf die Platte gebracht werden</translation>
  </message>
  <message>
   <source>the record cannot be locked</source>
   <translation>das Protokoll kann nicht gesperrt werden</translation>
  </message>
  <message>
   <source>the record cannot be opened</source>
   <translation>das Protokoll kann nicht geöffnet werden</translation>
  </message>
  <message>
   <source>the record cannot be created</source>
   <translation>das Protokoll kann nicht angelegt werden</translation>
  </message>
  <message>
   <source>the record cannot be read</source>
   <translation>das Protokoll kann nicht gelesen werden</translation>
  </message>
  <message>
   <source>the record cannot be read: %1</source>
   <translation>das Protokoll kann nicht gelesen werden: %1</translation>
  </message>
  <message>
   <source>check the name</source>
   <translation>den Namen prüfen</translation>
  </message>
  <message>
   <source>another program is writing this record</source>
   <translation>ein anderes Programm schreibt dieses Protokoll</translation>
  </message>
  <message>
   <source>stop that one first, or begin another record</source>
   <translation>zuerst jenes beenden, oder ein anderes Protokoll beginnen</translation>
  </message>
  <message>
   <source>there is a file of this name already</source>
   <translation>eine Datei dieses Namens gibt es schon</translation>
  </message>
  <message>
   <source>resume it if it is this show's record, or choose another name</source>
   <translation>fortsetzen, wenn es das Protokoll dieser Show ist, oder einen anderen Namen wählen</translation>
  </message>
  <message>
   <source>this file holds no sealed entry, so nothing was acknowledged in it</source>
   <translation>diese Datei hat keinen versiegelten Eintrag, also wurde nichts darin bestätigt</translation>
  </message>
  <message>
   <source>begin a new record under another name</source>
   <translation>ein neues Protokoll unter anderem Namen beginnen</translation>
  </message>
  <message>
   <source>begin a new record</source>
   <translation>ein neues Protokoll beginnen</translation>
  </message>
  <message>
   <source>the record belongs to another station: %1</source>
   <translation>das Protokoll gehört einer anderen Station: %1</translation>
  </message>
  <message>
   <source>go on at that station, or begin a new record</source>
   <translation>an jener Station weitermachen, oder ein neues Protokoll beginnen</translation>
  </message>
  <message>
   <source>the record does not verify: %1</source>
   <translation>die Prüfung des Protokolls schlägt fehl: %1</translation>
  </message>
  <message>
   <source>keep this file as it is, and begin a new record</source>
   <translation>diese Datei lassen, wie sie ist, und ein neues Protokoll beginnen</translation>
  </message>
  <message>
   <source>cannot open the port</source>
   <translation>der Anschluss kann nicht geöffnet werden</translation>
  </message>
  <message>
   <source>cannot set the port up</source>
   <translation>der Anschluss kann nicht eingerichtet werden</translation>
  </message>
  <message>
   <source>%1: no permission</source>
   <translation>%1: keine Berechtigung</translation>
  </message>
  <message>
   <source>ask who runs this machine</source>
   <translation>den fragen, der diesen Rechner betreut</translation>
  </message>
  <message>
   <source>%1 belongs to the group %2, and you are not in it</source>
   <translation>%1 gehört der Gruppe %2, und Sie sind nicht darin</translation>
  </message>
  <message>
   <source>run 'sudo usermod -aG %1 "$USER"', log out and in again</source>
   <translation>'sudo usermod -aG %1 "$USER"' ausführen, ab- und wieder anmelden</translation>
  </message>
  <message>
   <source>%1 is in use by another program</source>
   <translation>%1 wird von einem anderen Programm benutzt</translation>
  </message>
  <message>
   <source>close that program, then try again</source>
   <translation>jenes Programm schließen, dann noch einmal versuchen</translation>
  </message>
  <message>
   <source>%1 is not there</source>
   <translation>%1 ist nicht da</translation>
  </message>
  <message>
   <source>plug the tester in, and see 'ls /dev/serial/by-id' for its name</source>
   <translation>den Prüfer einstecken, und mit 'ls /dev/serial/by-id' seinen Namen suchen</translation>
  </message>
  <message>
   <source>%1 is not a serial port</source>
   <translation>%1 ist kein serieller Anschluss</translation>
  </message>
  <message>
   <source>see the tester's sheet for its settings, and correct the profile</source>
   <translation>die Einstellungen im Blatt des Prüfers ansehen und das Profil berichtigen</translation>
  </message>
  <message>
   <source>correct the TOML</source>
   <translation>das TOML berichtigen</translation>
  </message>
  <message>
   <source>%1, row %2, column %3: %4</source>
   <translation>%1, Zeile %2, Spalte %3: %4</translation>
  </message>
  <message>
   <source>%1, row %2: %3</source>
   <translation>%1, Zeile %2: %3</translation>
  </message>
  <message>
   <source>%1, column %2: %3</source>
   <translation>%1, Spalte %2: %3</translation>
  </message>
  <message>
   <source>line %1, %2: %3</source>
   <translation>Zeile %1, %2: %3</translation>
  </message>
  <message>
   <source>this is UTF-16; save the table as CSV in UTF-8</source>
   <translation>das ist UTF-16; die Tabelle als CSV in UTF-8 speichern</translation>
  </message>
  <message>
   <source>this is a spreadsheet file; save the table as CSV in UTF-8</source>
   <translation>das ist eine Datei einer Tabellenkalkulation; die Tabelle als CSV in UTF-8 speichern</translation>
  </message>
  <message>
   <source>row %1 uses this pin already; give one of the two another pin</source>
   <translation>Zeile %1 benutzt diesen Stift schon; einer der beiden einen anderen Stift geben</translation>
  </message>
  <message>
   <source>the file is empty; the first row names the columns</source>
   <translation>die Datei ist leer; die erste Zeile nennt die Spalten</translation>
  </message>
  <message>
   <source>this is no column of a plan</source>
   <translation>das ist keine Spalte eines Plans</translation>
  </message>
  <message>
   <source>write a text in quotes</source>
   <translation>einen Text in Anführungszeichen schreiben</translation>
  </message>
  <message>
   <source>name the header that stands in the table</source>
   <translation>die Überschrift nennen, die in der Tabelle steht</translation>
  </message>
  <message>
   <source>this column has a header and a constant; keep one</source>
   <translation>diese Spalte hat eine Überschrift und einen festen Wert; eines behalten</translation>
  </message>
  <message>
   <source>cannot take the column map</source>
   <translation>die Spaltenzuordnung kann nicht genommen werden</translation>
  </message>
  <message>
   <source>a quote stands inside a field; put the whole field in quotes and double it</source>
   <translation>ein Anführungszeichen steht in einem Feld; das ganze Feld in Anführungszeichen setzen und es verdoppeln</translation>
  </message>
  <message>
   <source>a quoted field is not closed; add the missing quote</source>
   <translation>ein Feld in Anführungszeichen ist nicht geschlossen; das fehlende ergänzen</translation>
  </message>
  <message>
   <source>save the table as UTF-8</source>
   <translation>die Tabelle als UTF-8 speichern</translation>
  </message>
  <message>
   <source>this header stands there twice; keep one of the columns</source>
   <translation>diese Überschrift steht zweimal da; eine der Spalten behalten</translation>
  </message>
  <message>
   <source>the table has no column '%1'; add it, or map another header onto it with a column map</source>
   <translation>die Tabelle hat keine Spalte '%1'; hinzufügen, oder ihr mit einer Spaltenzuordnung eine andere Überschrift geben</translation>
  </message>
  <message>
   <source>the igniter file has none</source>
   <translation>die Zünderdatei hat keinen</translation>
  </message>
  <message>
   <source>name one of the igniter file: %1</source>
   <translation>einen aus der Zünderdatei nennen: %1</translation>
  </message>
  <message>
   <source>this field is beyond the last header; a separator is too many</source>
   <translation>dieses Feld liegt hinter der letzten Überschrift; ein Trennzeichen ist zu viel</translation>
  </message>
  <message>
   <source>write a whole number from 1 to 9999, as 7 or %1</source>
   <translation>eine ganze Zahl von 1 bis 9999 schreiben, wie 7 oder %1</translation>
  </message>
  <message>
   <source>name the cue that this pin fires</source>
   <translation>den Cue nennen, den dieser Stift zündet</translation>
  </message>
  <message>
   <source>write how many igniters, a whole number from 0 to 999</source>
   <translation>schreiben, wie viele Zünder, eine ganze Zahl von 0 bis 999</translation>
  </message>
  <message>
   <source>write AWG24, 0.5mm2, or the name of a [wire] of the igniter file</source>
   <translation>AWG24, 0.5mm2 oder den Namen eines [wire] der Zünderdatei schreiben</translation>
  </message>
  <message>
   <source>the plan has more wire sizes than can be told apart; use fewer</source>
   <translation>der Plan hat mehr Drahtgrößen, als zu unterscheiden sind; weniger nehmen</translation>
  </message>
  <message>
   <source>write the one-way length in metres, from 0 to 10000, as 12.5</source>
   <translation>die einfache Länge in Metern schreiben, von 0 bis 10000, wie 12.5</translation>
  </message>
  <message>
   <source>write series or parallel</source>
   <translation>series oder parallel schreiben</translation>
  </message>
  <message>
   <source>write the calibre in millimetres, above 0 and up to 1000</source>
   <translation>das Kaliber in Millimetern schreiben, über 0 und bis 1000</translation>
  </message>
  <message>
   <source>no igniter is planned here, so this pin must read open</source>
   <translation>hier ist kein Zünder geplant, also muss dieser Stift offen lesen</translation>
  </message>
  <message>
   <source>a lead without a wire counts as 0 ohm; name its wire</source>
   <translation>eine Leitung ohne Draht zählt als 0 Ohm; ihren Draht nennen</translation>
  </message>
  <message>
   <source>a wire without a length counts as 0 ohm; give lead_m</source>
   <translation>ein Draht ohne Länge zählt als 0 Ohm; lead_m angeben</translation>
  </message>
  <message>
   <source>no cue has a position, so no walking order can be given</source>
   <translation>kein Cue hat eine Position, also gibt es keine Reihenfolge für den Rundgang</translation>
  </message>
  <message>
   <source>cue %1 has no position</source>
   <translation>Cue %1 hat keine Position</translation>
  </message>
  <message>
   <source>module %1 has %2 rails by %3</source>
   <translation>Modul %1 hat nach %3 %2 Schienen</translation>
  </message>
  <message>
   <source>this rail has %1 pins by %2</source>
   <translation>diese Schiene hat nach %2 %1 Stifte</translation>
  </message>
  <message>
   <source>the modules have more rails or pins than a field can; state their sizes with a module file, or correct the numbers</source>
   <translation>die Module haben mehr Schienen oder Stifte, als ein Feld kann; ihre Größen in einer Moduldatei angeben, oder die Zahlen berichtigen</translation>
  </message>
  <message>
   <source>give rails = [pins on rail 1, pins on rail 2, ...], each from 1 to 9999</source>
   <translation>rails = [Stifte auf Schiene 1, Stifte auf Schiene 2, ...] angeben, jede von 1 bis 9999</translation>
  </message>
  <message>
   <source>write a table [%1]</source>
   <translation>eine Tabelle [%1] schreiben</translation>
  </message>
  <message>
   <source>name a module from 1 to 9999, as [module.7]</source>
   <translation>ein Modul von 1 bis 9999 nennen, als [module.7]</translation>
  </message>
  <message>
   <source>this module is there twice</source>
   <translation>dieses Modul steht zweimal da</translation>
  </message>
  <message>
   <source>cannot take the module sizes</source>
   <translation>die Modulgrößen können nicht genommen werden</translation>
  </message>
  <message>
   <source>no_fire_a is above all_fire_a; look at the data sheet again</source>
   <translation>no_fire_a liegt über all_fire_a; das Datenblatt noch einmal ansehen</translation>
  </message>
  <message>
   <source>test_max_a is above no_fire_a; look at the data sheet again</source>
   <translation>test_max_a liegt über no_fire_a; das Datenblatt noch einmal ansehen</translation>
  </message>
  <message>
   <source>give bridge_ohm = [least, most] in ohm</source>
   <translation>bridge_ohm = [kleinster, größter] in Ohm angeben</translation>
  </message>
  <message>
   <source>give ohm_per_km = [least, most] of one conductor</source>
   <translation>ohm_per_km = [kleinster, größter] eines Leiters angeben</translation>
  </message>
  <message>
   <source>give volt = [least, most] under load</source>
   <translation>volt = [kleinste, größte] unter Last angeben</translation>
  </message>
  <message>
   <source>give source_ohm of the source and its cable; 0 if none</source>
   <translation>source_ohm der Quelle und ihres Kabels angeben; 0, wenn keiner</translation>
  </message>
  <message>
   <source>cannot take the igniter file</source>
   <translation>die Zünderdatei kann nicht genommen werden</translation>
  </message>
  <message>
   <source>write a number from %1 to %2</source>
   <translation>eine Zahl von %1 bis %2 schreiben</translation>
  </message>
  <message>
   <source>write a whole number from %1 to %2</source>
   <translation>eine ganze Zahl von %1 bis %2 schreiben</translation>
  </message>
  <message>
   <source>write [least, most], least first, from %1 to %2</source>
   <translation>[kleinster, größter] schreiben, den kleinsten zuerst, von %1 bis %2</translation>
  </message>
  <message>
   <source>this is no key; did you mean %1?</source>
   <translation>das ist kein Schlüsselwort; war %1 gemeint?</translation>
  </message>
  <message>
   <source>the site is over 100 km across</source>
   <translation>das Gelände ist über 100 km breit</translation>
  </message>
  <message>
   <source>check longitude and latitude of each place</source>
   <translation>Länge und Breite jedes Ortes prüfen</translation>
  </message>
  <message>
   <source>not a GeoJSON FeatureCollection</source>
   <translation>keine FeatureCollection nach GeoJSON</translation>
  </message>
  <message>
   <source>export the site as GeoJSON (RFC 7946)</source>
   <translation>das Gelände als GeoJSON (RFC 7946) exportieren</translation>
  </message>
  <message>
   <source>a position has no name</source>
   <translation>eine Position hat keinen Namen</translation>
  </message>
  <message>
   <source>name it as the plan does</source>
   <translation>so nennen wie im Plan</translation>
  </message>
  <message>
   <source>a ring is not closed</source>
   <translation>ein Ring ist nicht geschlossen</translation>
  </message>
  <message>
   <source>end it with the place it began with</source>
   <translation>mit dem Ort enden, mit dem er begann</translation>
  </message>
  <message>
   <source>a feature has no role</source>
   <translation>ein Feature hat keine Rolle</translation>
  </message>
  <message>
   <source>write position, audience, structure, control or exclusion</source>
   <translation>position, audience, structure, control oder exclusion schreiben</translation>
  </message>
  <message>
   <source>the show has mistakes</source>
   <translation>die Show hat Fehler</translation>
  </message>
  <message>
   <source>mend them first</source>
   <translation>zuerst beheben</translation>
  </message>
  <message>
   <source>Choose a plan first</source>
   <translation>Zuerst einen Plan wählen</translation>
  </message>
  <message>
   <source>%1 pins on %2 modules, %3 positions</source>
   <translation>%1 Stifte an %2 Modulen, %3 Positionen</translation>
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
   <translation>Laufzettel</translation>
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
   <translation>Passphrase des Schlüssels dieser Person</translation>
  </message>
  <message>
   <source>Cancel</source>
   <translation>Abbrechen</translation>
  </message>
  <message>
   <source>Passphrase</source>
   <translation>Passphrase</translation>
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
   <translation>ungemessen</translation>
  </message>
  <message>
   <source>by %1</source>
   <translation>von %1</translation>
  </message>
  <message>
   <source>no port chosen</source>
   <translation>kein Anschluss</translation>
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
   <source>(no plain text)</source>
   <translation>(kein lesbarer Text)</translation>
  </message>
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
   <translation>Eine Vorführung: Show, Personen und Fehler sind erfunden. Die Passphrase aller ist: %1</translation>
  </message>
  <message>
   <source>Light and size of text</source>
   <translation>Licht und Schriftgröße</translation>
  </message>
  <message>
   <source>Light and text</source>
   <translation>Licht und Schrift</translation>
  </message>
  <message>
   <source>A demonstration: everybody's passphrase is: %1</source>
   <translation>Eine Vorführung: die Passphrase aller ist: %1</translation>
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
   <translation>abgelehnt</translation>
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
   <translation>Prüfung</translation>
  </message>
 </context>
</TS>
