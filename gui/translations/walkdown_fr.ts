<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<TS version="2.1" language="fr">
 <context>
  <name>Against</name>
  <message>
   <source>“%1”</source>
   <translation>« %1 »</translation>
  </message>
  <message>
   <source>%1 is in the field</source>
   <translation>%1 est sur le terrain</translation>
  </message>
  <message>
   <source>The tag of %1 is not back</source>
   <translation>L'étiquette de %1 n'est pas rendue</translation>
  </message>
  <message>
   <source>Stage “%1” is not closed yet</source>
   <translation>L'étape « %1 » n'est pas encore fermée</translation>
  </message>
 </context>
 <context>
  <name>AnswerForm</name>
  <message>
   <source>Value in %1</source>
   <translation>Valeur en %1</translation>
  </message>
  <message>
   <source>Value in %1 (%2)</source>
   <translation>Valeur en %1 (%2)</translation>
  </message>
  <message>
   <source>What you heard or saw, in words</source>
   <translation>Ce qui a été entendu ou vu, en mots</translation>
  </message>
  <message>
   <source>File: a photo or the permit itself</source>
   <translation>Fichier : une photo ou le permis lui-même</translation>
  </message>
  <message>
   <source>Choose the file …</source>
   <translation>Choisir le fichier …</translation>
  </message>
  <message>
   <source>Choose the file</source>
   <translation>Choisir le fichier</translation>
  </message>
  <message>
   <source>Mean over %1 min, in m/s</source>
   <translation>Moyenne sur %1 min, en m/s</translation>
  </message>
  <message>
   <source>Gust, the highest 3 s mean, in m/s</source>
   <translation>Rafale, la plus haute moyenne sur 3 s, en m/s</translation>
  </message>
  <message>
   <source>Choose what was seen.</source>
   <translation>Choisir ce qui a été vu.</translation>
  </message>
  <message>
   <source>Say what was seen.</source>
   <translation>Dire ce qui a été vu.</translation>
  </message>
  <message>
   <source>'%1' is not a number.</source>
   <translation>« %1 » n'est pas un nombre.</translation>
  </message>
  <message>
   <source>Mean and gust are numbers in m/s.</source>
   <translation>Moyenne et rafale sont des nombres en m/s.</translation>
  </message>
  <message>
   <source>mean %1 m/s, gust %2 m/s</source>
   <translation>moyenne %1 m/s, rafale %2 m/s</translation>
  </message>
 </context>
 <context>
  <name>AskFile</name>
  <message>
   <source>Up</source>
   <translation>Remonter</translation>
  </message>
  <message>
   <source>New folder</source>
   <translation>Nouveau dossier</translation>
  </message>
  <message>
   <source>Look in:</source>
   <translation>Regarder dans :</translation>
  </message>
  <message>
   <source>File name:</source>
   <translation>Nom du fichier :</translation>
  </message>
  <message>
   <source>Files of type:</source>
   <translation>Type de fichier :</translation>
  </message>
  <message>
   <source>Cancel</source>
   <translation>Annuler</translation>
  </message>
  <message>
   <source>Save</source>
   <translation>Enregistrer</translation>
  </message>
  <message>
   <source>Open</source>
   <translation>Ouvrir</translation>
  </message>
 </context>
 <context>
  <name>BandPlot</name>
  <message>
   <source>Expected band and readings</source>
   <translation>Plage attendue et mesures</translation>
  </message>
  <message>
   <source>expected, in ohm</source>
   <translation>attendu, en ohms</translation>
  </message>
 </context>
 <context>
  <name>ChecklistView</name>
  <message>
   <source>Checklist</source>
   <translation>Liste</translation>
  </message>
  <message>
   <source>Timeline</source>
   <translation>Chronologie</translation>
  </message>
 </context>
 <context>
  <name>EnrolDialog</name>
  <message>
   <source>Enrol</source>
   <translation>Inscrire</translation>
  </message>
  <message>
   <source>Enrol a person</source>
   <translation>Inscrire une personne</translation>
  </message>
  <message>
   <source>Name: somebody with a key here, or a new name</source>
   <translation>Nom : quelqu'un qui a une clé ici, ou un nouveau nom</translation>
  </message>
  <message>
   <source>Role</source>
   <translation>Rôle</translation>
  </message>
  <message>
   <source>Passphrase for a new key, at least 8 characters; empty where the person has a key</source>
   <translation>Phrase de passe pour une nouvelle clé, au moins 8 caractères ; vide si la personne a une clé</translation>
  </message>
  <message>
   <source>Cancel</source>
   <translation>Annuler</translation>
  </message>
  <message>
   <source>Name</source>
   <translation>Nom</translation>
  </message>
  <message>
   <source>Passphrase for a new key</source>
   <translation>Phrase de passe pour une nouvelle clé</translation>
  </message>
  <message>
   <source>Enrolled as entry %1.</source>
   <translation>Inscription écrite, entrée %1.</translation>
  </message>
 </context>
 <context>
  <name>EntryModel</name>
  <message>
   <source>Entry</source>
   <translation>Entrée</translation>
  </message>
  <message>
   <source>Time</source>
   <translation>Heure</translation>
  </message>
  <message>
   <source>Kind</source>
   <translation>Genre</translation>
  </message>
  <message>
   <source>What it says</source>
   <translation>Ce qu'elle dit</translation>
  </message>
 </context>
 <context>
  <name>FaultReadings</name>
  <message>
   <source>nothing planned</source>
   <translation>rien de prévu</translation>
  </message>
  <message>
   <source>planned %1 to %2 ohm</source>
   <translation>prévu %1 à %2 ohm</translation>
  </message>
  <message>
   <source>%1, %2 ohm</source>
   <translation>%1, %2 ohm</translation>
  </message>
  <message numerus="yes">
   <source>and %n more</source>
   <translation>
    <numerusform>et %n autre</numerusform>
    <numerusform>et %n autres</numerusform>
   </translation>
  </message>
 </context>
 <context>
  <name>Faults</name>
  <message>
   <source>fits now</source>
   <translation>conforme maintenant</translation>
  </message>
  <message>
   <source>re-hooked</source>
   <translation>rebranché</translation>
  </message>
  <message>
   <source>Read these pins again.</source>
   <translation>Mesurer ces broches à nouveau.</translation>
  </message>
  <message>
   <source>the whole field</source>
   <translation>tout le terrain</translation>
  </message>
  <message>
   <source>%1 to P%2</source>
   <translation>%1 à P%2</translation>
  </message>
  <message>
   <source>%1 and %2</source>
   <translation>%1 et %2</translation>
  </message>
  <message numerus="yes">
   <source>%1 and %n more</source>
   <translation>
    <numerusform>%1 et %n de plus</numerusform>
    <numerusform>%1 et %n de plus</numerusform>
   </translation>
  </message>
 </context>
 <context>
  <name>FaultsView</name>
  <message>
   <source>where the crew was last</source>
   <translation>là où l’équipe était en dernier</translation>
  </message>
  <message>
   <source>The walk begins</source>
   <translation>La tournée commence</translation>
  </message>
  <message>
   <source>Next to do</source>
   <translation>À faire ensuite</translation>
  </message>
  <message>
   <source>Faults in walking order</source>
   <translation>Défauts dans l'ordre de marche</translation>
  </message>
  <message>
   <source>Print the walk sheet …</source>
   <translation>Imprimer la feuille de marche …</translation>
  </message>
  <message>
   <source>Re-hooked: read again</source>
   <translation>Rebranché : mesurer à nouveau</translation>
  </message>
  <message>
   <source>Show in the field</source>
   <translation>Montrer sur le terrain</translation>
  </message>
  <message>
   <source>Nothing is found. That is never more than what the tester can show.</source>
   <translation>Rien n'est trouvé. Ce n'est jamais plus que ce que le testeur peut montrer.</translation>
  </message>
  <message numerus="yes">
   <source>%n to do</source>
   <translation>
    <numerusform>%n à faire</numerusform>
    <numerusform>%n à faire</numerusform>
   </translation>
  </message>
  <message>
   <source>No fault is chosen</source>
   <translation>Aucun défaut choisi</translation>
  </message>
  <message>
   <source>Confidence: %1 %</source>
   <translation>Confiance : %1 %</translation>
  </message>
  <message>
   <source>. Or else: %1</source>
   <translation>. Ou bien : %1</translation>
  </message>
 </context>
 <context>
  <name>FieldCanvas</name>
  <message>
   <source>The field, drawn</source>
   <translation>Le terrain, dessiné</translation>
  </message>
  <message>
   <source>%1: %2</source>
   <translation>%1 : %2</translation>
  </message>
 </context>
 <context>
  <name>FieldView</name>
  <message>
   <source>Pin, as M01/R1/P05</source>
   <translation>Broche : M01/R1/P05</translation>
  </message>
  <message>
   <source>Go to a pin</source>
   <translation>Aller à une broche</translation>
  </message>
  <message>
   <source>Whole field</source>
   <translation>Tout le terrain</translation>
  </message>
  <message>
   <source>Nearer</source>
   <translation>Plus près</translation>
  </message>
  <message>
   <source>Farther</source>
   <translation>Plus loin</translation>
  </message>
  <message>
   <source>There is no pin %1; a pin is written M01/R1/P05.</source>
   <translation>Il n'y a pas de broche %1 ; une broche s'écrit M01/R1/P05.</translation>
  </message>
 </context>
 <context>
  <name>FilePage</name>
  <message>
   <source>Choose a file …</source>
   <translation>Choisir un fichier …</translation>
  </message>
  <message>
   <source>Choose a file</source>
   <translation>Choisir un fichier</translation>
  </message>
 </context>
 <context>
  <name>Item</name>
  <message>
   <source>somebody enters the field</source>
   <translation>quelqu'un entre sur le terrain</translation>
  </message>
  <message>
   <source>a pin is hooked up anew</source>
   <translation>une broche est rebranchée</translation>
  </message>
  <message>
   <source>a hold is called</source>
   <translation>un arrêt est appelé</translation>
  </message>
  <message>
   <source>the clock steps</source>
   <translation>l'horloge saute</translation>
  </message>
  <message>
   <source>the computer sleeps</source>
   <translation>l'ordinateur dort</translation>
  </message>
  <message>
   <source>the computer starts anew</source>
   <translation>l'ordinateur redémarre</translation>
  </message>
  <message>
   <source>the show time moves</source>
   <translation>l'heure du spectacle change</translation>
  </message>
  <message>
   <source>thunder is heard</source>
   <translation>le tonnerre est entendu</translation>
  </message>
  <message>
   <source>a key changes hands</source>
   <translation>une clé change de main</translation>
  </message>
  <message>
   <source> or </source>
   <translation> ou </translation>
  </message>
  <message>
   <source>mean at most %1 m/s, gust at most %2 m/s</source>
   <translation>moyenne au plus %1 m/s, rafale au plus %2 m/s</translation>
  </message>
  <message>
   <source>%1 to %2</source>
   <translation>%1 à %2</translation>
  </message>
  <message>
   <source>at least %1</source>
   <translation>au moins %1</translation>
  </message>
  <message>
   <source>at most %1</source>
   <translation>au plus %1</translation>
  </message>
  <message>
   <source>Answered by: %1</source>
   <translation>Répond : %1</translation>
  </message>
  <message>
   <source>Follows from the record; nobody answers it.</source>
   <translation>Découle du registre ; personne n'y répond.</translation>
  </message>
  <message>
   <source>Second signature: %1</source>
   <translation>Seconde signature : %1</translation>
  </message>
  <message>
   <source>Holds for: %1</source>
   <translation>Tient pour : %1</translation>
  </message>
  <message>
   <source>Valid for: %1</source>
   <translation>Valable : %1</translation>
  </message>
  <message>
   <source>Needs first: %1</source>
   <translation>Exige d'abord : %1</translation>
  </message>
  <message>
   <source>Broken when: %1</source>
   <translation>Rompu quand : %1</translation>
  </message>
  <message>
   <source>Source: %1</source>
   <translation>Source : %1</translation>
  </message>
 </context>
 <context>
  <name>ItemDelegate</name>
  <message>
   <source> – ends first</source>
   <translation> – finit en premier</translation>
  </message>
 </context>
 <context>
  <name>ItemModel</name>
  <message>
   <source>not open yet</source>
   <translation>pas encore ouvert</translation>
  </message>
  <message>
   <source>closed by %1</source>
   <translation>fermé par %1</translation>
  </message>
  <message>
   <source>open</source>
   <translation>ouvert</translation>
  </message>
  <message>
   <source>Release</source>
   <translation>Autorisation</translation>
  </message>
  <message>
   <source>%1 left</source>
   <translation>encore %1</translation>
  </message>
  <message>
   <source>wait %1</source>
   <translation>attendre %1</translation>
  </message>
 </context>
 <context>
  <name>ItemPage</name>
  <message>
   <source>Sign this answer</source>
   <translation>Signer cette réponse</translation>
  </message>
  <message>
   <source>Second signature</source>
   <translation>Seconde signature</translation>
  </message>
  <message>
   <source>Waive …</source>
   <translation>Déroger …</translation>
  </message>
  <message>
   <source>Close this stage</source>
   <translation>Fermer cette étape</translation>
  </message>
  <message>
   <source>The pause at the end of a stage is closed by: %1. Every item of the stage must hold.</source>
   <translation>La pause à la fin d'une étape est fermée par : %1. Chaque point de l'étape doit tenir.</translation>
  </message>
  <message>
   <source>Not open yet: the stage before it is not closed.</source>
   <translation>Pas encore ouverte : l'étape d'avant n'est pas fermée.</translation>
  </message>
  <message>
   <source>Closed by %1.</source>
   <translation>Fermée par %1.</translation>
  </message>
  <message>
   <source>Open.</source>
   <translation>Ouverte.</translation>
  </message>
  <message>
   <source>Answer: %1, by %2</source>
   <translation>Réponse : %1, par %2</translation>
  </message>
  <message>
   <source>, confirmed by %1</source>
   <translation>, confirmé par %1</translation>
  </message>
  <message>
   <source>. Given under a second after the question.</source>
   <translation>. Donnée moins d'une seconde après la question.</translation>
  </message>
  <message>
   <source>Waive this item</source>
   <translation>Déroger à ce point</translation>
  </message>
  <message>
   <source>This covers only the failure as it stands now: %1</source>
   <translation>Cela ne couvre que le défaut tel qu'il est : %1</translation>
  </message>
  <message>
   <source>Reason</source>
   <translation>Motif</translation>
  </message>
 </context>
 <context>
  <name>KeysPage</name>
  <message>
   <source>Keys</source>
   <translation>Clés</translation>
  </message>
  <message>
   <source>A hand-over is signed by both, the receiver first. Until the giver has signed too, the giver holds the key.</source>
   <translation>Une remise est signée par les deux, le receveur d'abord. Tant que le donneur n'a pas signé, il tient la clé.</translation>
  </message>
  <message>
   <source>The checklist has no key.</source>
   <translation>La liste n'a pas de clé.</translation>
  </message>
  <message>
   <source>In the hands of %1</source>
   <translation>Dans les mains de %1</translation>
  </message>
  <message>
   <source>In its place: %1</source>
   <translation>À sa place : %1</translation>
  </message>
  <message>
   <source>%1 has signed for it; %2 still holds it.</source>
   <translation>%1 a signé pour la recevoir ; %2 la tient encore.</translation>
  </message>
  <message>
   <source>Take it …</source>
   <translation>La prendre …</translation>
  </message>
  <message>
   <source>Take the key</source>
   <translation>Prendre la clé</translation>
  </message>
  <message>
   <source>I take the %1.</source>
   <translation>Je prends : %1.</translation>
  </message>
  <message>
   <source>Receive it …</source>
   <translation>La recevoir …</translation>
  </message>
  <message>
   <source>Receive the key</source>
   <translation>Recevoir la clé</translation>
  </message>
  <message>
   <source>I receive the %1 from %2.</source>
   <translation>Je reçois : %1, de %2.</translation>
  </message>
  <message>
   <source>Give it to %1 …</source>
   <translation>La donner à %1 …</translation>
  </message>
  <message>
   <source>Give the key</source>
   <translation>Donner la clé</translation>
  </message>
  <message>
   <source>I give the %1 to %2.</source>
   <translation>Je donne : %1, à %2.</translation>
  </message>
  <message>
   <source>Put it: %1 …</source>
   <translation>La poser : %1 …</translation>
  </message>
  <message>
   <source>Put the key down</source>
   <translation>Poser la clé</translation>
  </message>
  <message>
   <source>I put the %1 here: %2.</source>
   <translation>Je pose : %1, ici : %2.</translation>
  </message>
 </context>
 <context>
  <name>LearnDialog</name>
  <message>
   <source>Save as a profile …</source>
   <translation>Enregistrer comme profil …</translation>
  </message>
  <message>
   <source>Learn a format</source>
   <translation>Apprendre un format</translation>
  </message>
  <message>
   <source>Lines of the tester: paste a few</source>
   <translation>Lignes du testeur : en coller quelques-unes</translation>
  </message>
  <message>
   <source>Choose a part of the first line, then press what it is</source>
   <translation>Choisir une partie de la première ligne, puis presser ce qu'elle est</translation>
  </message>
  <message>
   <source>What every line becomes</source>
   <translation>Ce que chaque ligne devient</translation>
  </message>
  <message>
   <source>Close</source>
   <translation>Fermer</translation>
  </message>
  <message>
   <source>Lines of the tester</source>
   <translation>Lignes du testeur</translation>
  </message>
  <message>
   <source>Pattern: %1</source>
   <translation>Motif : %1</translation>
  </message>
  <message>
   <source>taken: </source>
   <translation>prise : </translation>
  </message>
  <message>
   <source>NOT taken: </source>
   <translation>PAS prise : </translation>
  </message>
  <message>
   <source>Save as a profile</source>
   <translation>Enregistrer comme profil</translation>
  </message>
 </context>
 <context>
  <name>Legend</name>
  <message>
   <source>Verdicts and how many pins have each</source>
   <translation>Verdicts et nombre de broches pour chacun</translation>
  </message>
 </context>
 <context>
  <name>LookDialog</name>
  <message>
   <source>Light and text</source>
   <translation>Lumière et texte</translation>
  </message>
  <message>
   <source>Light</source>
   <translation>Lumière</translation>
  </message>
  <message>
   <source>Day</source>
   <translation>Jour</translation>
  </message>
  <message>
   <source>Dusk</source>
   <translation>Crépuscule</translation>
  </message>
  <message>
   <source>Night: red on black</source>
   <translation>Nuit : rouge sur noir</translation>
  </message>
  <message>
   <source>Size of text</source>
   <translation>Taille du texte</translation>
  </message>
  <message>
   <source>%1 %</source>
   <translation>%1 %</translation>
  </message>
  <message>
   <source>Close</source>
   <translation>Fermer</translation>
  </message>
 </context>
 <context>
  <name>Navigation</name>
  <message>
   <source>Views</source>
   <translation>Vues</translation>
  </message>
 </context>
 <context>
  <name>NewShowDialog</name>
  <message>
   <source>Back</source>
   <translation>Retour</translation>
  </message>
  <message>
   <source>Open the new record</source>
   <translation>Ouvrir le nouveau registre</translation>
  </message>
  <message>
   <source>New show</source>
   <translation>Nouveau spectacle</translation>
  </message>
  <message>
   <source>Cancel</source>
   <translation>Annuler</translation>
  </message>
  <message>
   <source>The record</source>
   <translation>Le registre</translation>
  </message>
  <message>
   <source>A new file, on this computer. Everything of the day is kept in it. The crew is enrolled once it is open.</source>
   <translation>Un nouveau fichier, sur cet ordinateur. Toute la journée y est gardée. L'équipe est inscrite une fois qu'il est ouvert.</translation>
  </message>
  <message>
   <source>The record's file</source>
   <translation>Fichier du registre</translation>
  </message>
  <message>
   <source>Choose where …</source>
   <translation>Choisir où …</translation>
  </message>
  <message>
   <source>Step %1 of %2</source>
   <translation>Étape %1 sur %2</translation>
  </message>
  <message>
   <source>What must be mended first:</source>
   <translation>Ce qu'il faut corriger d'abord :</translation>
  </message>
  <message>
   <source>Worth a look:</source>
   <translation>À regarder :</translation>
  </message>
  <message>
   <source>Next</source>
   <translation>Suivant</translation>
  </message>
 </context>
 <context>
  <name>Paper</name>
  <message>
   <source>Given to the printer.</source>
   <translation>Remis à l'imprimante.</translation>
  </message>
  <message>
   <source>The printer did not take it: look at it and at its queue.</source>
   <translation>L'imprimante ne l'a pas pris : regardez-la, et sa file d'attente.</translation>
  </message>
 </context>
 <context>
  <name>PeoplePage</name>
  <message>
   <source>People and tags</source>
   <translation>Personnes et étiquettes</translation>
  </message>
  <message>
   <source>Enrol a person …</source>
   <translation>Inscrire une personne …</translation>
  </message>
  <message>
   <source>Where somebody goes</source>
   <translation>Où quelqu'un va</translation>
  </message>
  <message>
   <source>anywhere in the field</source>
   <translation>n'importe où sur le terrain</translation>
  </message>
  <message>
   <source>Nobody is enrolled yet.</source>
   <translation>Personne n'est encore inscrit.</translation>
  </message>
  <message>
   <source>IN THE FIELD</source>
   <translation>SUR LE TERRAIN</translation>
  </message>
  <message>
   <source>outside</source>
   <translation>dehors</translation>
  </message>
  <message>
   <source>tag out</source>
   <translation>étiquette posée</translation>
  </message>
  <message>
   <source>Comes out …</source>
   <translation>Sort …</translation>
  </message>
  <message>
   <source>%1 comes out of the field</source>
   <translation>%1 sort du terrain</translation>
  </message>
  <message>
   <source>Told by another …</source>
   <translation>Dit par un autre …</translation>
  </message>
  <message>
   <source>Another person says that %1 is out</source>
   <translation>Une autre personne dit que %1 est dehors</translation>
  </message>
  <message>
   <source>Goes in</source>
   <translation>Entre</translation>
  </message>
  <message>
   <source>%1 goes into the field</source>
   <translation>%1 entre sur le terrain</translation>
  </message>
  <message>
   <source>Tag back …</source>
   <translation>Étiquette reprise …</translation>
  </message>
  <message>
   <source>%1 takes the tag back</source>
   <translation>%1 reprend l'étiquette</translation>
  </message>
  <message>
   <source>Tag, told by another …</source>
   <translation>Étiquette, dit par un autre …</translation>
  </message>
  <message>
   <source>Hangs a tag</source>
   <translation>Pose une étiquette</translation>
  </message>
  <message>
   <source>%1 hangs a tag</source>
   <translation>%1 pose une étiquette</translation>
  </message>
  <message>
   <source>Out of the field</source>
   <translation>Hors du terrain</translation>
  </message>
  <message>
   <source>%1 is out of the field.</source>
   <translation>%1 est hors du terrain.</translation>
  </message>
  <message>
   <source>Reason</source>
   <translation>Motif</translation>
  </message>
  <message>
   <source>Tag back</source>
   <translation>Étiquette reprise</translation>
  </message>
  <message>
   <source>The tag of %1 is back.</source>
   <translation>L'étiquette de %1 est reprise.</translation>
  </message>
  <message>
   <source>Where the next person goes in; the pins there count as unread from then on</source>
   <translation>Où entre la prochaine personne ; les broches y comptent dès lors comme non lues</translation>
  </message>
 </context>
 <context>
  <name>PinPage</name>
  <message>
   <source>Current, by the planned loop at its worst</source>
   <translation>Courant, d’après la boucle prévue au pire</translation>
  </message>
  <message>
   <source>Current, by the measured loop</source>
   <translation>Courant, d’après la boucle mesurée</translation>
  </message>
  <message>
   <source>Choose a pin: by pointer, or with the arrow keys. N goes to the next that does not fit.</source>
   <translation>Choisir une broche : au pointeur ou avec les flèches. N va à la prochaine qui n'est pas conforme.</translation>
  </message>
  <message>
   <source>free: nothing is planned here</source>
   <translation>libre : rien n'est prévu ici</translation>
  </message>
  <message>
   <source>, %1 ohm</source>
   <translation>, %1 ohm</translation>
  </message>
  <message numerus="yes">
   <source>%n igniter(s)</source>
   <translation>
    <numerusform>%n inflammateur</numerusform>
    <numerusform>%n inflammateurs</numerusform>
   </translation>
  </message>
  <message>
   <source>, in series</source>
   <translation>, en série</translation>
  </message>
  <message>
   <source>, in parallel</source>
   <translation>, en parallèle</translation>
  </message>
  <message>
   <source>, lead %1 m</source>
   <translation>, ligne %1 m</translation>
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
   <translation>Ou bien : %1 (%2 %)</translation>
  </message>
  <message>
   <source>Re-hooked</source>
   <translation>Rebranché</translation>
  </message>
  <message numerus="yes">
   <source>%n pin(s) read alike: a swap among them cannot be seen by the tester.</source>
   <translation>
    <numerusform>%n broche se lit pareil : le testeur ne peut pas voir un échange.</numerusform>
    <numerusform>%n broches se lisent pareil : le testeur ne peut pas voir un échange entre elles.</numerusform>
   </translation>
  </message>
  <message>
   <source>Show the pins that read alike</source>
   <translation>Montrer les broches semblables</translation>
  </message>
  <message>
   <source>%1 ohm</source>
   <translation>%1 ohm</translation>
  </message>
  <message>
   <source>above range</source>
   <translation>hors gamme</translation>
  </message>
  <message>
   <source> (before the re-hook)</source>
   <translation> (avant le rebranchement)</translation>
  </message>
  <message>
   <source>History, the newest first</source>
   <translation>Historique, le plus récent d'abord</translation>
  </message>
  <message>
   <source>and %1 more: see the record</source>
   <translation>et %1 de plus : voir le registre</translation>
  </message>
 </context>
 <context>
  <name>QrCode</name>
  <message>
   <source>QR code of the mark %1</source>
   <translation>Code QR de la marque %1</translation>
  </message>
 </context>
 <context>
  <name>RecordView</name>
  <message>
   <source>Readings too</source>
   <translation>Mesures aussi</translation>
  </message>
  <message>
   <source>Verify now</source>
   <translation>Vérifier maintenant</translation>
  </message>
  <message>
   <source>Find in the entries</source>
   <translation>Chercher dans les entrées</translation>
  </message>
  <message>
   <source>Entries of the record</source>
   <translation>Entrées du registre</translation>
  </message>
  <message>
   <source>Mark of the record now: write it on the permit</source>
   <translation>Marque du registre maintenant : à écrire sur le permis</translation>
  </message>
  <message>
   <source>The entry, as it stands on disk</source>
   <translation>L'entrée, telle qu'elle est sur le disque</translation>
  </message>
  <message>
   <source>Not verified since it was opened.</source>
   <translation>Pas vérifié depuis l'ouverture.</translation>
  </message>
  <message>
   <source>Reading the whole record …</source>
   <translation>Lecture de tout le registre …</translation>
  </message>
  <message>
   <source>At %1 all %2 entries held; the mark was %3.</source>
   <translation>À %1 les %2 entrées tenaient toutes ; la marque était %3.</translation>
  </message>
  <message>
   <source>DOES NOT HOLD, line %1: %2</source>
   <translation>NE TIENT PAS, ligne %1 : %2</translation>
  </message>
 </context>
 <context>
  <name>ReleasePage</name>
  <message>
   <source>Release</source>
   <translation>Autorisation</translation>
  </message>
  <message>
   <source>Show time, by the clock of this place</source>
   <translation>Heure du spectacle, à l'horloge du lieu</translation>
  </message>
  <message>
   <source>Show time</source>
   <translation>Heure du spectacle</translation>
  </message>
  <message>
   <source>Set the show time …</source>
   <translation>Fixer l'heure du spectacle …</translation>
  </message>
  <message>
   <source>Set the show time</source>
   <translation>Fixer l'heure du spectacle</translation>
  </message>
  <message>
   <source>The show begins at %1.</source>
   <translation>Le spectacle commence à %1.</translation>
  </message>
  <message>
   <source>Lift the hold …</source>
   <translation>Lever l'arrêt …</translation>
  </message>
  <message>
   <source>Withdraw the release: anyone, at once</source>
   <translation>Retirer l'autorisation : n'importe qui, aussitôt</translation>
  </message>
  <message>
   <source>The last release fell: %1</source>
   <translation>La dernière autorisation est tombée : %1</translation>
  </message>
  <message>
   <source>Sign the release …</source>
   <translation>Signer l'autorisation …</translation>
  </message>
  <message>
   <source>Waiting for a second signature</source>
   <translation>En attente d'une seconde signature</translation>
  </message>
  <message>
   <source>%1, by %2</source>
   <translation>%1, par %2</translation>
  </message>
  <message>
   <source>Second signature to entry %1 …</source>
   <translation>Seconde signature pour l'entrée %1 …</translation>
  </message>
  <message>
   <source>Second signature</source>
   <translation>Seconde signature</translation>
  </message>
  <message>
   <source>Sign the release</source>
   <translation>Signer l'autorisation</translation>
  </message>
  <message>
   <source>Every item holds at this moment, the field is clear, and the release falls by itself when anything under it falls.</source>
   <translation>Chaque point tient à cet instant, le terrain est vide, et l'autorisation tombe d'elle-même si quoi que ce soit tombe sous elle.</translation>
  </message>
  <message>
   <source>Lift the hold</source>
   <translation>Lever l'arrêt</translation>
  </message>
  <message>
   <source>What the hold broke is to be answered anew.</source>
   <translation>Ce que l'arrêt a rompu doit recevoir une nouvelle réponse.</translation>
  </message>
  <message>
   <source>Reason</source>
   <translation>Motif</translation>
  </message>
  <message>
   <source>Timeline</source>
   <translation>Chronologie</translation>
  </message>
 </context>
 <context>
  <name>ReportView</name>
  <message>
   <source>The report is made from the record alone, which is verified on the way.</source>
   <translation>Le rapport est fait du seul registre, vérifié au passage.</translation>
  </message>
  <message>
   <source>Make the report</source>
   <translation>Faire le rapport</translation>
  </message>
  <message>
   <source>Save as PDF …</source>
   <translation>Enregistrer en PDF …</translation>
  </message>
  <message>
   <source>Save as HTML …</source>
   <translation>Enregistrer en HTML …</translation>
  </message>
  <message>
   <source>Print …</source>
   <translation>Imprimer …</translation>
  </message>
  <message>
   <source>The report</source>
   <translation>Le rapport</translation>
  </message>
  <message>
   <source>Reading the whole record …</source>
   <translation>Lecture de tout le registre …</translation>
  </message>
  <message>
   <source>Save as PDF</source>
   <translation>Enregistrer en PDF</translation>
  </message>
  <message>
   <source>Saved: %1</source>
   <translation>Enregistré : %1</translation>
  </message>
  <message>
   <source>Save as HTML</source>
   <translation>Enregistrer en HTML</translation>
  </message>
  <message>
   <source>As it stood at %1; printed it is black on white.</source>
   <translation>État à %1 ; imprimé, il est noir sur blanc.</translation>
  </message>
 </context>
 <context>
  <name>SampleLine</name>
  <message>
   <source>Sample line: choose a part of it</source>
   <translation>Ligne d'exemple : en choisir une partie</translation>
  </message>
  <message>
   <source>The chosen part is: %1</source>
   <translation>La partie choisie est : %1</translation>
  </message>
  <message>
   <source>Begin anew</source>
   <translation>Recommencer</translation>
  </message>
  <message>
   <source>Nothing is marked yet.</source>
   <translation>Rien n'est encore marqué.</translation>
  </message>
  <message>
   <source>Module</source>
   <translation>Module</translation>
  </message>
  <message>
   <source>Rail</source>
   <translation>Rail</translation>
  </message>
  <message>
   <source>Pin</source>
   <translation>Broche</translation>
  </message>
  <message>
   <source>Value</source>
   <translation>Valeur</translation>
  </message>
  <message>
   <source>Unit</source>
   <translation>Unité</translation>
  </message>
  <message>
   <source>Line number</source>
   <translation>Numéro de ligne</translation>
  </message>
 </context>
 <context>
  <name>Sentences</name>
  <message>
   <source>the line is not as a record writes it: a checkpoint holds one text and nothing else</source>
   <translation>la ligne n'est pas telle qu'un registre l'écrit : un point de contrôle contient un texte et rien d'autre</translation>
  </message>
  <message>
   <source>the line is not as a record writes it: no entry number</source>
   <translation>la ligne n'est pas telle qu'un registre l'écrit : pas de numéro d'entrée</translation>
  </message>
  <message>
   <source>the line is not as a record writes it: no time</source>
   <translation>la ligne n'est pas telle qu'un registre l'écrit : pas d'heure</translation>
  </message>
  <message>
   <source>the line is not as a record writes it: the time is not one, in UTC with three decimals</source>
   <translation>la ligne n'est pas telle qu'un registre l'écrit : l'heure n'en est pas une, en UTC à trois décimales</translation>
  </message>
  <message>
   <source>the line is not as a record writes it: no boot clock</source>
   <translation>la ligne n'est pas telle qu'un registre l'écrit : pas d'horloge depuis le démarrage</translation>
  </message>
  <message>
   <source>the line is not as a record writes it: no kind</source>
   <translation>la ligne n'est pas telle qu'un registre l'écrit : pas de genre</translation>
  </message>
  <message>
   <source>the line is not as a record writes it: no body</source>
   <translation>la ligne n'est pas telle qu'un registre l'écrit : pas de contenu</translation>
  </message>
  <message>
   <source>the line is not as a record writes it: the body has another spelling at byte %1</source>
   <translation>la ligne n'est pas telle qu'un registre l'écrit : le contenu est écrit autrement à l'octet %1</translation>
  </message>
  <message>
   <source>the line is longer than a record allows</source>
   <translation>la ligne est plus longue qu'un registre ne le permet</translation>
  </message>
  <message>
   <source>entry %1 should stand here, and it is entry %2</source>
   <translation>l'entrée %1 devrait être ici, et c'est l'entrée %2</translation>
  </message>
  <message>
   <source>no checkpoint comes for too long</source>
   <translation>aucun point de contrôle ne vient pendant trop longtemps</translation>
  </message>
  <message>
   <source>a checkpoint stands here with no entry before it</source>
   <translation>un point de contrôle est ici sans entrée avant lui</translation>
  </message>
  <message>
   <source>a checkpoint has one signature</source>
   <translation>un point de contrôle a une signature</translation>
  </message>
  <message>
   <source>the checkpoint is not signed by a station of this record</source>
   <translation>le point de contrôle n'est signé par aucune station de ce registre</translation>
  </message>
  <message>
   <source>the checkpoint seals %1 entries, and %2 stand before it</source>
   <translation>le point de contrôle scelle %1 entrées, et %2 sont avant lui</translation>
  </message>
  <message>
   <source>line %1 was changed after it was sealed</source>
   <translation>la ligne %1 a été modifiée après le scellement</translation>
  </message>
  <message>
   <source>one of the lines %1 to %2 was changed after it was sealed</source>
   <translation>l'une des lignes %1 à %2 a été modifiée après le scellement</translation>
  </message>
  <message>
   <source>line %1</source>
   <translation>ligne %1</translation>
  </message>
  <message>
   <source>one of the lines %1 to %2</source>
   <translation>l'une des lignes %1 à %2</translation>
  </message>
  <message>
   <source>the checkpoint is of another record: %1</source>
   <translation>le point de contrôle est d'un autre registre : %1</translation>
  </message>
  <message>
   <source>the file ends in the middle of this line: its end was cut, or never written</source>
   <translation>le fichier finit au milieu de cette ligne : sa fin a été coupée, ou jamais écrite</translation>
  </message>
  <message>
   <source>no checkpoint follows %1: the end was cut, or never acknowledged</source>
   <translation>aucun point de contrôle ne suit : %1. La fin a été coupée, ou jamais confirmée</translation>
  </message>
  <message>
   <source>the file is empty</source>
   <translation>le fichier est vide</translation>
  </message>
  <message>
   <source>the opening does not hold: %1</source>
   <translation>l'ouverture ne tient pas : %1</translation>
  </message>
  <message>
   <source>the record was closed, and this entry comes after it</source>
   <translation>le registre a été fermé, et cette entrée vient après</translation>
  </message>
  <message>
   <source>the sign-off belongs to another record</source>
   <translation>la signature appartient à un autre registre</translation>
  </message>
  <message>
   <source>the sign-off names a state that this record was not in shortly before</source>
   <translation>la signature nomme un état que ce registre n'avait pas peu avant</translation>
  </message>
  <message>
   <source>the sign-off is too old for this entry</source>
   <translation>la signature est trop ancienne pour cette entrée</translation>
  </message>
  <message>
   <source>the sign-off is of another time than its entry</source>
   <translation>la signature est d'un autre moment que son entrée</translation>
  </message>
  <message>
   <source>the sign-off was used before</source>
   <translation>la signature a déjà servi</translation>
  </message>
  <message>
   <source>the cosignature is for another record</source>
   <translation>la cosignature est pour un autre registre</translation>
  </message>
  <message>
   <source>the cosignature is by nobody who is enrolled as witness</source>
   <translation>la cosignature n'est de personne qui soit inscrit comme témoin</translation>
  </message>
  <message>
   <source>the cosigned state is not one that this record was in</source>
   <translation>l'état cosigné n'est pas un état de ce registre</translation>
  </message>
  <message>
   <source>the entry %1 does not hold: %2</source>
   <translation>l'entrée %1 ne tient pas : %2</translation>
  </message>
  <message>
   <source>it has to be signed, and is not</source>
   <translation>elle doit être signée, et ne l'est pas</translation>
  </message>
  <message>
   <source>the entry %1 does not hold: %2 signed something else than the entry says</source>
   <translation>l'entrée %1 ne tient pas : %2 a signé autre chose que ce que dit l'entrée</translation>
  </message>
  <message>
   <source>it is signed by %1 as %2, and says %3 as %4</source>
   <translation>elle est signée par %1 comme %2, et dit %3 comme %4</translation>
  </message>
  <message>
   <source>the release was signed and not possible at that moment; %1</source>
   <translation>l'autorisation a été signée et n'était pas possible à ce moment ; %1</translation>
  </message>
  <message>
   <source>this is no checkpoint</source>
   <translation>ce n'est pas un point de contrôle</translation>
  </message>
  <message>
   <source>pin %1 of rail %2, module %3</source>
   <translation>la broche %1 du rail %2, module %3</translation>
  </message>
  <message>
   <source>Check the plug, the lead and the igniter on %1: the circuit is open; mend it, then read it again</source>
   <translation>Vérifiez la fiche, la ligne et l'inflammateur de %1 : le circuit est ouvert ; réparez, puis mesurez à nouveau</translation>
  </message>
  <message>
   <source>Take the shunt off the lead on %1, or find where its two conductors touch; then read it again</source>
   <translation>Retirez le shunt de la ligne de %1, ou cherchez où ses deux conducteurs se touchent ; puis mesurez à nouveau</translation>
  </message>
  <message>
   <source>Count the igniters on %1: one fewer is connected than planned; add it, then read it again</source>
   <translation>Comptez les inflammateurs sur %1 : il y en a un de moins que prévu ; ajoutez-le, puis mesurez à nouveau</translation>
  </message>
  <message>
   <source>Count the igniters on %1: one more is connected than planned; take it off, then read it again</source>
   <translation>Comptez les inflammateurs sur %1 : il y en a un de plus que prévu ; retirez-le, puis mesurez à nouveau</translation>
  </message>
  <message>
   <source>Make the splices and the plug on %1 anew: a joint adds resistance; then read it again</source>
   <translation>Refaites les jonctions et la fiche de %1 : une jonction ajoute de la résistance ; puis mesurez à nouveau</translation>
  </message>
  <message>
   <source>Dry and insulate the splices on %1: current leaks past the igniter; then read it again</source>
   <translation>Séchez et isolez les jonctions de %1 : du courant passe à côté de l'inflammateur ; puis mesurez à nouveau</translation>
  </message>
  <message>
   <source>Re-seat the plug and tug each splice on %1: its readings jump; then read it several times</source>
   <translation>Remettez la fiche et tirez sur chaque jonction de %1 : ses mesures sautent ; puis mesurez plusieurs fois</translation>
  </message>
  <message>
   <source>See whose lead is on %1: nothing is planned there; move it to its own pin, then read both again</source>
   <translation>Voyez à qui est la ligne sur %1 : rien n'y est prévu ; mettez-la sur sa propre broche, puis mesurez les deux à nouveau</translation>
  </message>
  <message>
   <source>Compare length and gauge of the lead on %1 with the plan; change the one that is wrong, then read it again</source>
   <translation>Comparez la longueur et la section de la ligne de %1 avec le plan ; changez ce qui est faux, puis mesurez à nouveau</translation>
  </message>
  <message>
   <source>Compare the type of igniter on %1 with the plan; change it, then read it again</source>
   <translation>Comparez le type d'inflammateur de %1 avec le plan ; changez-le, puis mesurez à nouveau</translation>
  </message>
  <message>
   <source>Read %1 again: its readings cannot be believed or explained; if they stay, trace its circuit by eye</source>
   <translation>Mesurez %1 à nouveau : ses mesures ne sont ni crédibles ni explicables ; si elles restent, suivez son circuit à l'œil</translation>
  </message>
  <message>
   <source>Exchange the leads on %1 and %2; then read both again</source>
   <translation>Échangez les lignes de %1 et %2 ; puis mesurez les deux à nouveau</translation>
  </message>
  <message>
   <source>On module %1, rail %2, the leads planned for pins %3 to %4 sit %5 pin too high: move each back to its own pin, then read the rail again</source>
   <translation>Au module %1, rail %2, les lignes prévues pour les broches %3 à %4 sont %5 broche trop haut : remettez chacune sur sa broche, puis mesurez le rail à nouveau</translation>
  </message>
  <message>
   <source>On module %1, rail %2, the leads planned for pins %3 to %4 sit %5 pins too high: move each back to its own pin, then read the rail again</source>
   <translation>Au module %1, rail %2, les lignes prévues pour les broches %3 à %4 sont %5 broches trop haut : remettez chacune sur sa broche, puis mesurez le rail à nouveau</translation>
  </message>
  <message>
   <source>On module %1, rail %2, the leads planned for pins %3 to %4 sit %5 pin too low: move each back to its own pin, then read the rail again</source>
   <translation>Au module %1, rail %2, les lignes prévues pour les broches %3 à %4 sont %5 broche trop bas : remettez chacune sur sa broche, puis mesurez le rail à nouveau</translation>
  </message>
  <message>
   <source>On module %1, rail %2, the leads planned for pins %3 to %4 sit %5 pins too low: move each back to its own pin, then read the rail again</source>
   <translation>Au module %1, rail %2, les lignes prévues pour les broches %3 à %4 sont %5 broches trop bas : remettez chacune sur sa broche, puis mesurez le rail à nouveau</translation>
  </message>
  <message>
   <source>Unplug rail %1 of module %2 and turn it round; then read it again</source>
   <translation>Débranchez le rail %1 du module %2 et retournez-le ; puis mesurez-le à nouveau</translation>
  </message>
  <message>
   <source>Exchange the plugs of rail %1 of module %2 and rail %3 of module %4; then read both again</source>
   <translation>Échangez les fiches du rail %1 du module %2 et du rail %3 du module %4 ; puis mesurez les deux à nouveau</translation>
  </message>
  <message>
   <source>Exchange modules %1 and %2 (or their addresses); then read both again</source>
   <translation>Échangez les modules %1 et %2 (ou leurs adresses) ; puis mesurez les deux à nouveau</translation>
  </message>
  <message>
   <source>Touch the tester's probe tips together, zero it, and read the field again: every reading is off by the same ohms</source>
   <translation>Faites se toucher les pointes du testeur, mettez-le à zéro et mesurez le terrain à nouveau : chaque mesure est décalée des mêmes ohms</translation>
  </message>
  <message>
   <source>Check gauge and material of the wire on the reels against the plan: all leads are off by one factor; correct the plan or the wire, then read again</source>
   <translation>Comparez la section et la matière du fil des bobines avec le plan : toutes les lignes s'écartent d'un même facteur ; corrigez le plan ou le fil, puis mesurez à nouveau</translation>
  </message>
  <message>
   <source>%1; no reading tells this from %2: to decide, %3</source>
   <translation>%1 ; aucune mesure ne le distingue de : %2. Pour décider : %3</translation>
  </message>
  <message>
   <source>%1; or it is, at %2 %, %3: to decide, %4</source>
   <translation>%1 ; ou c'est, à %2 % : %3. Pour décider : %4</translation>
  </message>
  <message>
   <source>an open circuit</source>
   <translation>un circuit ouvert</translation>
  </message>
  <message>
   <source>a short</source>
   <translation>un court-circuit</translation>
  </message>
  <message>
   <source>one igniter too few</source>
   <translation>un inflammateur de moins</translation>
  </message>
  <message>
   <source>one igniter too many</source>
   <translation>un inflammateur de trop</translation>
  </message>
  <message>
   <source>a poor joint</source>
   <translation>une mauvaise jonction</translation>
  </message>
  <message>
   <source>a leak</source>
   <translation>une fuite</translation>
  </message>
  <message>
   <source>a loose contact</source>
   <translation>un faux contact</translation>
  </message>
  <message>
   <source>somebody else's lead</source>
   <translation>la ligne d'un autre</translation>
  </message>
  <message>
   <source>a lead of another length or gauge</source>
   <translation>une ligne d'une autre longueur ou section</translation>
  </message>
  <message>
   <source>another type of igniter</source>
   <translation>un autre type d'inflammateur</translation>
  </message>
  <message>
   <source>test leads that were not zeroed</source>
   <translation>des cordons qui n'ont pas été mis à zéro</translation>
  </message>
  <message>
   <source>another wire throughout</source>
   <translation>un autre fil partout</translation>
  </message>
  <message>
   <source>something that no reading explains</source>
   <translation>quelque chose qu'aucune mesure n'explique</translation>
  </message>
  <message>
   <source>see whether the shunt of %1 is still on</source>
   <translation>voir si le shunt de %1 est encore en place</translation>
  </message>
  <message>
   <source>count the igniters on %1</source>
   <translation>compter les inflammateurs de %1</translation>
  </message>
  <message>
   <source>tug each splice on %1 and read it again</source>
   <translation>tirer sur chaque jonction de %1 et mesurer à nouveau</translation>
  </message>
  <message>
   <source>see whether a splice on %1 is wet</source>
   <translation>voir si une jonction de %1 est mouillée</translation>
  </message>
  <message>
   <source>tug the plug and the splices on %1 and read it again</source>
   <translation>tirer sur la fiche et les jonctions de %1 et mesurer à nouveau</translation>
  </message>
  <message>
   <source>compare the lead on %1 with the plan</source>
   <translation>comparer la ligne de %1 avec le plan</translation>
  </message>
  <message>
   <source>read the label of the igniter on %1</source>
   <translation>lire l'étiquette de l'inflammateur de %1</translation>
  </message>
  <message>
   <source>touch the tester's probe tips together and read that</source>
   <translation>faire se toucher les pointes du testeur et mesurer</translation>
  </message>
  <message>
   <source>read gauge and material on the reels</source>
   <translation>lire la section et la matière sur les bobines</translation>
  </message>
  <message>
   <source>unplug the lead on %1 and look at it</source>
   <translation>débrancher la ligne de %1 et la regarder</translation>
  </message>
  <message>
   <source>read the tags of the leads on %1 and %2</source>
   <translation>lire les étiquettes des lignes de %1 et %2</translation>
  </message>
  <message>
   <source>pull the lead on %1: if its tag is that of the pin %2 below, the row is shifted</source>
   <translation>retirer la ligne de %1 : si son étiquette est celle de la broche %2 plus bas, la rangée est décalée</translation>
  </message>
  <message>
   <source>pull the lead on %1: if its tag is that of the pin %2 above, the row is shifted</source>
   <translation>retirer la ligne de %1 : si son étiquette est celle de la broche %2 plus haut, la rangée est décalée</translation>
  </message>
  <message>
   <source>see which way round rail %1 of module %2 is plugged</source>
   <translation>voir dans quel sens le rail %1 du module %2 est branché</translation>
  </message>
  <message>
   <source>read the tags on the plugs of rail %1, module %2 and rail %3, module %4</source>
   <translation>lire les étiquettes des fiches du rail %1, module %2 et du rail %3, module %4</translation>
  </message>
  <message>
   <source>read the number plates and addresses of modules %1 and %2</source>
   <translation>lire les plaques et les adresses des modules %1 et %2</translation>
  </message>
  <message>
   <source>%1 and %2 exchanged</source>
   <translation>%1 et %2 échangés</translation>
  </message>
  <message>
   <source>pins %1 to %2 of rail %3, module %4 shifted by %5</source>
   <translation>les broches %1 à %2 du rail %3, module %4 décalées de %5</translation>
  </message>
  <message>
   <source>rail %1 of module %2 turned round</source>
   <translation>le rail %1 du module %2 retourné</translation>
  </message>
  <message>
   <source>rail %1 of module %2 and rail %3 of module %4 exchanged</source>
   <translation>le rail %1 du module %2 et le rail %3 du module %4 échangés</translation>
  </message>
  <message>
   <source>modules %1 and %2 exchanged</source>
   <translation>les modules %1 et %2 échangés</translation>
  </message>
  <message>
   <source>50 mA, WAC 212-17-317(6)</source>
   <translation>50 mA, WAC 212-17-317(6)</translation>
  </message>
  <message>
   <source>the maker's test_max_a of %1</source>
   <translation>le test_max_a du fabricant de %1</translation>
  </message>
  <message>
   <source>%1 % of the no-fire current of %2</source>
   <translation>%1 % du courant de non-feu de %2</translation>
  </message>
  <message>
   <source>The tester's current cannot be judged: its profile gives no test_current_a; look at the meter's and the igniters' data sheets before you connect it</source>
   <translation>Le courant du testeur ne peut être jugé : son profil ne donne pas de test_current_a ; regardez les fiches du testeur et des inflammateurs avant de le brancher</translation>
  </message>
  <message>
   <source>The tester's current cannot be judged: %1 has no no_fire_a; type it in from the maker's data sheet before you connect the tester</source>
   <translation>Le courant du testeur ne peut être jugé : %1 n'a pas de no_fire_a ; saisissez-le d'après la fiche du fabricant avant de brancher le testeur</translation>
  </message>
  <message>
   <source>The tester drives %1 mA into a short, the limit is %2 mA (%3)</source>
   <translation>Le testeur débite %1 mA dans un court-circuit, la limite est %2 mA (%3)</translation>
  </message>
  <message>
   <source>The tester drives %1 mA into a short, not above the limit of %2 mA (%3)</source>
   <translation>Le testeur débite %1 mA dans un court-circuit, pas plus que la limite de %2 mA (%3)</translation>
  </message>
  <message>
   <source>reading with this tester is refused</source>
   <translation>la mesure avec ce testeur est refusée</translation>
  </message>
  <message>
   <source>use a tester that stays below it</source>
   <translation>prenez un testeur qui reste en dessous</translation>
  </message>
  <message>
   <source>The firing current of %1 cannot be judged: its igniter or its wire is not in the igniter file; add it there and import the plan again</source>
   <translation>Le courant de tir de %1 ne peut être jugé : son inflammateur ou son fil n'est pas dans le fichier d'inflammateurs ; ajoutez-le et importez le plan à nouveau</translation>
  </message>
  <message>
   <source>The firing current cannot be judged: the igniter file has no [supply]</source>
   <translation>Le courant de tir ne peut être jugé : le fichier d'inflammateurs n'a pas de [supply]</translation>
  </message>
  <message>
   <source>The firing current cannot be judged: no all_fire_a is given for %1; take it from the maker's sheet</source>
   <translation>Le courant de tir ne peut être jugé : aucun all_fire_a n'est donné pour %1 ; prenez-le sur la fiche du fabricant</translation>
  </message>
  <message>
   <source>%1: %2 A at least through each igniter, %3 times its all-fire current of %4 A</source>
   <translation>%1 : au moins %2 A dans chaque inflammateur, %3 fois son courant de feu certain de %4 A</translation>
  </message>
  <message>
   <source>%1; the loop may have %2 ohm, it has %3</source>
   <translation>%1 ; la boucle peut avoir %2 ohms, elle en a %3</translation>
  </message>
  <message>
   <source>%1; in a series string the fastest bridge may part before the slowest has started: use the maker's series current</source>
   <translation>%1 ; dans une série, le pont le plus rapide peut se rompre avant que le plus lent n'ait commencé : prenez le courant de série du fabricant</translation>
  </message>
  <message>
   <source>not answered yet</source>
   <translation>pas encore de réponse</translation>
  </message>
  <message>
   <source>due at %1, not answered yet</source>
   <translation>à faire pour %1, pas encore de réponse</translation>
  </message>
  <message>
   <source>waits for its second signature</source>
   <translation>attend sa seconde signature</translation>
  </message>
  <message>
   <source>was answered more than %1 ago</source>
   <translation>la réponse date de plus de %1</translation>
  </message>
  <message>
   <source>was read more than %1 ago</source>
   <translation>la mesure date de plus de %1</translation>
  </message>
  <message>
   <source>waived by %1 and %2: %3 (%4)</source>
   <translation>dérogé par %1 et %2 : %3 (%4)</translation>
  </message>
  <message>
   <source>the show has no site to measure on</source>
   <translation>le spectacle n'a pas de terrain sur lequel mesurer</translation>
  </message>
  <message>
   <source>the wait after the last thunder is over</source>
   <translation>l'attente après le dernier tonnerre est finie</translation>
  </message>
  <message>
   <source>no thunder near enough was told</source>
   <translation>aucun tonnerre assez proche n'a été signalé</translation>
  </message>
  <message>
   <source>thunder: wait until %1</source>
   <translation>tonnerre : attendre jusqu'à %1</translation>
  </message>
  <message>
   <source>wait until %1</source>
   <translation>attendre jusqu'à %1</translation>
  </message>
  <message>
   <source>the wait is over</source>
   <translation>l'attente est finie</translation>
  </message>
  <message>
   <source>the wait begins with %1</source>
   <translation>l'attente commence avec %1</translation>
  </message>
  <message>
   <source>%1 has the %2</source>
   <translation>%1 a : %2</translation>
  </message>
  <message>
   <source>%1 has the %2, in the field</source>
   <translation>%1 a : %2, sur le terrain</translation>
  </message>
  <message>
   <source>the %1 is in the %2</source>
   <translation>%1 : dans %2</translation>
  </message>
  <message>
   <source>the tag of %1 is not back</source>
   <translation>l'étiquette de %1 n'est pas revenue</translation>
  </message>
  <message>
   <source>%1 while %2 is in the field</source>
   <translation>%1 alors que %2 est sur le terrain</translation>
  </message>
  <message>
   <source>%1; it has to be %2</source>
   <translation>%1 ; sa place : %2</translation>
  </message>
  <message>
   <source>%1 or %2</source>
   <translation>%1 ou %2</translation>
  </message>
  <message>
   <source>with the %1</source>
   <translation>auprès de %1</translation>
  </message>
  <message>
   <source>in the %1</source>
   <translation>dans %1</translation>
  </message>
  <message>
   <source>nobody is in the field</source>
   <translation>personne n'est sur le terrain</translation>
  </message>
  <message>
   <source>%1 is in the field</source>
   <translation>%1 est sur le terrain</translation>
  </message>
  <message>
   <source>%1 are in the field: %2</source>
   <translation>%1 sont sur le terrain : %2</translation>
  </message>
  <message>
   <source>gusts of %1 are above %2</source>
   <translation>des rafales de %1 dépassent %2</translation>
  </message>
  <message>
   <source>a mean wind of %1 is above %2</source>
   <translation>un vent moyen de %1 dépasse %2</translation>
  </message>
  <message>
   <source>gusts of %1 are above %2, over %3</source>
   <translation>des rafales de %1 dépassent %2, sur %3</translation>
  </message>
  <message>
   <source>a mean wind of %1 is above %2, over %3</source>
   <translation>un vent moyen de %1 dépasse %2, sur %3</translation>
  </message>
  <message>
   <source>the last wind was read by somebody who may not</source>
   <translation>le dernier vent a été mesuré par quelqu'un qui n'y est pas autorisé</translation>
  </message>
  <message>
   <source>mean %1, gusts %2, by %3</source>
   <translation>moyenne %1, rafales %2, par %3</translation>
  </message>
  <message>
   <source>no wind over %1 was read yet</source>
   <translation>aucun vent sur %1 n'a encore été mesuré</translation>
  </message>
  <message>
   <source>nothing is known</source>
   <translation>rien n'est connu</translation>
  </message>
  <message>
   <source>no pin is planned, so there is nothing that could fit</source>
   <translation>aucune broche n'est prévue, donc rien ne peut être conforme</translation>
  </message>
  <message>
   <source>all %1 planned pins fit</source>
   <translation>les %1 broches prévues sont toutes conformes</translation>
  </message>
  <message>
   <source>%1 of %2 planned pins fit, %3 is waived by name</source>
   <translation>%1 des %2 broches prévues sont conformes, %3 est dérogée par son nom</translation>
  </message>
  <message>
   <source>%1 of %2 planned pins fit, %3 are waived by name</source>
   <translation>%1 des %2 broches prévues sont conformes, %3 sont dérogées par leur nom</translation>
  </message>
  <message>
   <source>of %1 planned pins %2</source>
   <translation>sur %1 broches prévues : %2</translation>
  </message>
  <message>
   <source>%1 is unread</source>
   <translation>%1 non lue</translation>
  </message>
  <message>
   <source>%1 are unread</source>
   <translation>%1 non lues</translation>
  </message>
  <message>
   <source>%1 was read too long ago</source>
   <translation>%1 lue il y a trop longtemps</translation>
  </message>
  <message>
   <source>%1 were read too long ago</source>
   <translation>%1 lues il y a trop longtemps</translation>
  </message>
  <message>
   <source>%1 are unread, %2</source>
   <translation>%1 non lues, %2</translation>
  </message>
  <message>
   <source>%1 is unread, %2</source>
   <translation>%1 non lue, %2</translation>
  </message>
  <message>
   <source>%1 was read too long ago, %2</source>
   <translation>%1 lue il y a trop longtemps, %2</translation>
  </message>
  <message>
   <source>%1 were read too long ago, %2</source>
   <translation>%1 lues il y a trop longtemps, %2</translation>
  </message>
  <message>
   <source>%1 does not fit (%2)</source>
   <translation>%1 non conforme (%2)</translation>
  </message>
  <message>
   <source>%1 do not fit (%2)</source>
   <translation>%1 non conformes (%2)</translation>
  </message>
  <message>
   <source>%1 fits</source>
   <translation>%1 conforme</translation>
  </message>
  <message>
   <source>%1 doubtful</source>
   <translation>%1 douteux</translation>
  </message>
  <message>
   <source>%1 low</source>
   <translation>%1 bas</translation>
  </message>
  <message>
   <source>%1 high</source>
   <translation>%1 haut</translation>
  </message>
  <message>
   <source>%1 open</source>
   <translation>%1 ouvert</translation>
  </message>
  <message>
   <source>%1 short</source>
   <translation>%1 en court-circuit</translation>
  </message>
  <message>
   <source>%1 unsteady</source>
   <translation>%1 instable</translation>
  </message>
  <message>
   <source>%1 stray</source>
   <translation>%1 étranger</translation>
  </message>
  <message>
   <source>%1 unread</source>
   <translation>%1 non lu</translation>
  </message>
  <message>
   <source>%1 stale</source>
   <translation>%1 périmé</translation>
  </message>
  <message>
   <source>was found: %1</source>
   <translation>trouvé : %1</translation>
  </message>
  <message>
   <source>%1 is below %2</source>
   <translation>%1 est en dessous de %2</translation>
  </message>
  <message>
   <source>%1 is above %2</source>
   <translation>%1 est au-dessus de %2</translation>
  </message>
  <message>
   <source>%1; %2</source>
   <translation>%1 ; %2</translation>
  </message>
  <message>
   <source>the clock went back over a restart, so its age is not known</source>
   <translation>l'horloge a reculé lors d'un redémarrage, donc son âge n'est pas connu</translation>
  </message>
  <message>
   <source>the wall clock stepped</source>
   <translation>l'horloge a sauté</translation>
  </message>
  <message>
   <source>the machine was started anew</source>
   <translation>la machine a redémarré</translation>
  </message>
  <message>
   <source>the machine slept</source>
   <translation>la machine s'est endormie</translation>
  </message>
  <message>
   <source>comes up again after the restart</source>
   <translation>revient après le redémarrage</translation>
  </message>
  <message>
   <source>comes up again after a break</source>
   <translation>revient après une interruption</translation>
  </message>
  <message>
   <source>comes up again after the hold</source>
   <translation>revient après l'arrêt</translation>
  </message>
  <message>
   <source>a pin was read after the release</source>
   <translation>une broche a été mesurée après l'autorisation</translation>
  </message>
  <message>
   <source>thunder was heard</source>
   <translation>du tonnerre a été entendu</translation>
  </message>
  <message>
   <source>pins were hooked up anew</source>
   <translation>des broches ont été rebranchées</translation>
  </message>
  <message>
   <source>the show was moved to %1</source>
   <translation>le spectacle a été déplacé à %1</translation>
  </message>
  <message>
   <source>a hold was called</source>
   <translation>un arrêt a été appelé</translation>
  </message>
  <message>
   <source>%1 called a hold</source>
   <translation>%1 a appelé un arrêt</translation>
  </message>
  <message>
   <source>%1 called a hold: %2</source>
   <translation>%1 a appelé un arrêt : %2</translation>
  </message>
  <message>
   <source>%1 went into the field</source>
   <translation>%1 est entré sur le terrain</translation>
  </message>
  <message>
   <source>%1 went into the field: %2</source>
   <translation>%1 est entré sur le terrain : %2</translation>
  </message>
  <message>
   <source>%1 went to %2</source>
   <translation>%1 est passé à %2</translation>
  </message>
  <message>
   <source>%1 withdrew it</source>
   <translation>%1 l'a retirée</translation>
  </message>
  <message>
   <source>%1 withdrew it: %2</source>
   <translation>%1 l'a retirée : %2</translation>
  </message>
  <message>
   <source>the record was closed</source>
   <translation>le registre a été fermé</translation>
  </message>
  <message>
   <source>the record was closed: %1</source>
   <translation>le registre a été fermé : %1</translation>
  </message>
  <message>
   <source>every item holds</source>
   <translation>chaque point tient</translation>
  </message>
  <message>
   <source>stands until %1 expires</source>
   <translation>tient jusqu'à ce que %1 expire</translation>
  </message>
  <message>
   <source>no stage is part of the release</source>
   <translation>aucune étape ne fait partie de l'autorisation</translation>
  </message>
  <message>
   <source>the pause after "%1" is not closed</source>
   <translation>la pause après « %1 » n'est pas fermée</translation>
  </message>
  <message>
   <source>%1 is open: %2</source>
   <translation>%1 est à faire : %2</translation>
  </message>
  <message>
   <source>%1 is due: %2</source>
   <translation>%1 est dû : %2</translation>
  </message>
  <message>
   <source>%1 is expired: %2</source>
   <translation>%1 est expiré : %2</translation>
  </message>
  <message>
   <source>%1 is broken: %2</source>
   <translation>%1 est rompu : %2</translation>
  </message>
  <message>
   <source>%1 is refused: %2</source>
   <translation>%1 est refusé : %2</translation>
  </message>
  <message>
   <source>every item holds to the end of the show at %1</source>
   <translation>chaque point tient jusqu'à la fin du spectacle à %1</translation>
  </message>
  <message>
   <source>a release for %1 is possible: begin %2 by %3</source>
   <translation>une autorisation pour %1 est possible : commencer %2 avant %3</translation>
  </message>
  <message>
   <source>no show time is set</source>
   <translation>aucune heure de spectacle n'est fixée</translation>
  </message>
  <message>
   <source>the show of %1 was released; nothing has to begin before it any more</source>
   <translation>le spectacle de %1 a été autorisé ; rien ne doit plus commencer avant</translation>
  </message>
  <message>
   <source>%1 lasts only %2: answered by %3 it would not hold to the end of the show at %4</source>
   <translation>%1 ne vaut que %2 : répondu pour %3, il ne tiendrait pas jusqu'à la fin du spectacle à %4</translation>
  </message>
  <message>
   <source>%1 cannot be done before %2, and had to be by %3: move the show by %4 or more</source>
   <translation>%1 ne peut être fait avant %2, et devait l'être pour %3 : déplacez le spectacle de %4 ou plus</translation>
  </message>
  <message>
   <source>as planned, %1 expires %2 before the show: answer it again between %3 and %4</source>
   <translation>comme prévu, %1 expire %2 avant le spectacle : répondez-y à nouveau entre %3 et %4</translation>
  </message>
  <message>
   <source>as planned, %1 expires %2 before the end of the show: answer it again between %3 and %4</source>
   <translation>comme prévu, %1 expire %2 avant la fin du spectacle : répondez-y à nouveau entre %3 et %4</translation>
  </message>
  <message>
   <source>%1: all %2 distances are kept</source>
   <translation>%1 : les %2 distances sont toutes respectées</translation>
  </message>
  <message>
   <source>%1: %2, and %3 more</source>
   <translation>%1 : %2, et %3 de plus</translation>
  </message>
  <message>
   <source>%1 lies inside %2, or too near its edge to tell</source>
   <translation>%1 est dans %2, ou trop près du bord pour le dire</translation>
  </message>
  <message>
   <source>%1 does not say how far %2 must be from %3: %4</source>
   <translation>%1 ne dit pas à quelle distance %2 doit être de %3 : %4</translation>
  </message>
  <message>
   <source>%1 is %2 from %3; %4 asks for %5</source>
   <translation>%1 est à %2 de %3 ; %4 demande %5</translation>
  </message>
  <message>
   <source>%1 lies outside the ground that is kept clear</source>
   <translation>%1 est hors du terrain tenu dégagé</translation>
  </message>
  <message>
   <source>the site does not show where %1 is</source>
   <translation>le terrain ne montre pas où est %1</translation>
  </message>
  <message>
   <source>the site shows no audience to measure to</source>
   <translation>le terrain ne montre pas de public vers lequel mesurer</translation>
  </message>
  <message>
   <source>%1 mm is above its largest calibre, %2 mm</source>
   <translation>%1 mm dépasse son plus grand calibre, %2 mm</translation>
  </message>
  <message>
   <source>it has cues without a calibre, and the table no distance for those</source>
   <translation>il a des cues sans calibre, et la table aucune distance pour eux</translation>
  </message>
  <message>
   <source>%1 over range</source>
   <translation>%1 hors gamme</translation>
  </message>
  <message>
   <source>%1 %2 ohm</source>
   <translation>%1 %2 ohm</translation>
  </message>
  <message>
   <source>%1 answered %2: %3</source>
   <translation>%1 a répondu à %2 : %3</translation>
  </message>
  <message>
   <source>%1 is enrolled as %2</source>
   <translation>%1 est inscrit comme %2</translation>
  </message>
  <message>
   <source>%1 looked and confirms: %2</source>
   <translation>%1 a regardé et confirme : %2</translation>
  </message>
  <message>
   <source>%1 closed the pause after "%2"</source>
   <translation>%1 a fermé la pause après « %2 »</translation>
  </message>
  <message>
   <source>%1 set the show for %2</source>
   <translation>%1 a fixé le spectacle à %2</translation>
  </message>
  <message>
   <source>wind: mean %1 m/s, gusts %2 m/s over %3, by %4</source>
   <translation>vent : moyenne %1 m/s, rafales %2 m/s sur %3, par %4</translation>
  </message>
  <message>
   <source>the instrument</source>
   <translation>l'instrument</translation>
  </message>
  <message>
   <source>instrument</source>
   <translation>instrument</translation>
  </message>
  <message>
   <source>somebody</source>
   <translation>quelqu'un</translation>
  </message>
  <message>
   <source>thunder was heard, %1 s after its flash</source>
   <translation>du tonnerre a été entendu, %1 s après l'éclair</translation>
  </message>
  <message>
   <source>%1 is out of the field</source>
   <translation>%1 est sorti du terrain</translation>
  </message>
  <message>
   <source>%1 hung a tag</source>
   <translation>%1 a posé une étiquette</translation>
  </message>
  <message>
   <source>%1 has the tag back</source>
   <translation>%1 a repris son étiquette</translation>
  </message>
  <message>
   <source>%1 says that %2 is out of the field</source>
   <translation>%1 dit que %2 est sorti du terrain</translation>
  </message>
  <message>
   <source>%1 says that %2 is out of the field: %3</source>
   <translation>%1 dit que %2 est sorti du terrain : %3</translation>
  </message>
  <message>
   <source>%1 says that %2 has the tag back</source>
   <translation>%1 dit que %2 a repris son étiquette</translation>
  </message>
  <message>
   <source>%1 says that %2 has the tag back: %3</source>
   <translation>%1 dit que %2 a repris son étiquette : %3</translation>
  </message>
  <message>
   <source>%1 says that %2 hung a tag</source>
   <translation>%1 dit que %2 a posé une étiquette</translation>
  </message>
  <message>
   <source>%1 signed for the %2 that %3 holds</source>
   <translation>%1 a signé pour : %2, encore auprès de %3</translation>
  </message>
  <message>
   <source>%1 gave the %2 to %3</source>
   <translation>%1 a remis à %3 : %2</translation>
  </message>
  <message>
   <source>%1 put the %2 into the %3</source>
   <translation>%1 a mis dans %3 : %2</translation>
  </message>
  <message>
   <source>%1 took the %2 out of the %3</source>
   <translation>%1 a pris dans %3 : %2</translation>
  </message>
  <message>
   <source>%1 lifted the hold</source>
   <translation>%1 a levé l'arrêt</translation>
  </message>
  <message>
   <source>%1 lifted the hold: %2</source>
   <translation>%1 a levé l'arrêt : %2</translation>
  </message>
  <message>
   <source>%1 waives %2, which reads %3</source>
   <translation>%1 déroge à %2, qui est : %3</translation>
  </message>
  <message>
   <source>%1 waives %2, which reads %3: %4</source>
   <translation>%1 déroge à %2, qui est %3 : %4</translation>
  </message>
  <message>
   <source>%1 waives %2</source>
   <translation>%1 déroge à %2</translation>
  </message>
  <message>
   <source>%1 waives %2: %3</source>
   <translation>%1 déroge à %2 : %3</translation>
  </message>
  <message>
   <source>%1 signed the release</source>
   <translation>%1 a signé l'autorisation</translation>
  </message>
  <message>
   <source>%1 withdrew the release</source>
   <translation>%1 a retiré l'autorisation</translation>
  </message>
  <message>
   <source>%1 withdrew the release: %2</source>
   <translation>%1 a retiré l'autorisation : %2</translation>
  </message>
  <message>
   <source>hooked up anew: %1</source>
   <translation>rebranché : %1</translation>
  </message>
  <message>
   <source>hooked up anew: %1 (%2)</source>
   <translation>rebranché : %1 (%2)</translation>
  </message>
  <message>
   <source>the whole field</source>
   <translation>tout le terrain</translation>
  </message>
  <message>
   <source>module %1 rail %2</source>
   <translation>module %1 rail %2</translation>
  </message>
  <message>
   <source>module %1</source>
   <translation>module %1</translation>
  </message>
  <message>
   <source>a line was not taken: %1</source>
   <translation>une ligne n'a pas été prise : %1</translation>
  </message>
  <message>
   <source>the field reads: %1</source>
   <translation>le terrain se lit : %1</translation>
  </message>
  <message>
   <source>%1 states: %2</source>
   <translation>%1 déclare : %2</translation>
  </message>
  <message>
   <source>the record was opened, with the checklist "%1"</source>
   <translation>le registre a été ouvert, avec la liste « %1 »</translation>
  </message>
  <message>
   <source>the program was started anew</source>
   <translation>le programme a redémarré</translation>
  </message>
  <message>
   <source>the machine slept for %1</source>
   <translation>la machine a dormi %1</translation>
  </message>
  <message>
   <source>the wall clock stepped back by %1</source>
   <translation>l'horloge a reculé de %1</translation>
  </message>
  <message>
   <source>the wall clock stepped on by %1</source>
   <translation>l'horloge a avancé de %1</translation>
  </message>
  <message>
   <source>a crash left lines that were never acknowledged; they are kept in %1</source>
   <translation>un arrêt brutal a laissé des lignes jamais confirmées ; elles sont gardées dans %1</translation>
  </message>
  <message>
   <source>a witness's signature that cannot be read</source>
   <translation>la signature d'un témoin, illisible</translation>
  </message>
  <message>
   <source>%1 signed as a witness that the first %2 entries stood at %3</source>
   <translation>%1 a attesté que les %2 premières entrées étaient là à %3</translation>
  </message>
  <message>
   <source>a time-stamp that does not hold</source>
   <translation>un horodatage qui ne tient pas</translation>
  </message>
  <message>
   <source>%1 signed that the first %2 entries stood at %3 (RFC 3161 time-stamp)</source>
   <translation>%1 a signé que les %2 premières entrées étaient là à %3 (horodatage RFC 3161)</translation>
  </message>
  <message>
   <source>the checksum is missing</source>
   <translation>la somme de contrôle manque</translation>
  </message>
  <message>
   <source>the checksum is %1, the line itself gives %2</source>
   <translation>la somme de contrôle est %1, la ligne elle-même donne %2</translation>
  </message>
  <message>
   <source>the unit %1 is not one of resistance</source>
   <translation>l'unité %1 n'est pas une unité de résistance</translation>
  </message>
  <message>
   <source>the tester says that it has no number</source>
   <translation>le testeur dit qu'il n'a pas de nombre</translation>
  </message>
  <message>
   <source>the value %1 is neither a number nor a word for above range</source>
   <translation>la valeur %1 n'est ni un nombre ni un mot pour hors gamme</translation>
  </message>
  <message>
   <source>the value %1 is outside -1000 ohm .. 1e9 ohm</source>
   <translation>la valeur %1 est hors de -1000 ohm .. 1e9 ohm</translation>
  </message>
  <message>
   <source>the line is longer than 4096 bytes</source>
   <translation>la ligne dépasse 4096 octets</translation>
  </message>
  <message>
   <source>the line is blank</source>
   <translation>la ligne est vide</translation>
  </message>
  <message>
   <source>the line has a NUL byte inside: a byte was damaged on the way</source>
   <translation>la ligne contient un octet NUL : un octet a été abîmé en route</translation>
  </message>
  <message>
   <source>the line is not in the form that the tester profile describes</source>
   <translation>la ligne n'a pas la forme que décrit le profil du testeur</translation>
  </message>
  <message>
   <source>the line number %1 is not a whole number</source>
   <translation>le numéro de ligne %1 n'est pas un entier</translation>
  </message>
  <message>
   <source>the %1 is not a number from 1 to 9999</source>
   <translation>%1 n'est pas un nombre de 1 à 9999</translation>
  </message>
  <message>
   <source>the line was cut off when the port went away</source>
   <translation>la ligne a été coupée quand le port a disparu</translation>
  </message>
  <message>
   <source>the first line after the port was opened may lack its beginning</source>
   <translation>la première ligne après l'ouverture du port peut manquer de son début</translation>
  </message>
  <message>
   <source>the checksum is missing, and most lines of this tester carry one</source>
   <translation>la somme de contrôle manque, et la plupart des lignes de ce testeur en ont une</translation>
  </message>
  <message>
   <source>"%1" is none of the states that %2 can be in</source>
   <translation>« %1 » n'est aucun des états que %2 peut avoir</translation>
  </message>
  <message>
   <source>choose what was seen: %1</source>
   <translation>choisissez ce qui a été vu : %1</translation>
  </message>
  <message>
   <source>the number of groups looked at is not the number there are</source>
   <translation>le nombre de groupes regardés n'est pas le nombre qu'il y a</translation>
  </message>
  <message>
   <source>walk the whole list of pins that read alike</source>
   <translation>parcourez toute la liste des broches semblables</translation>
  </message>
  <message>
   <source>%1 is answered by a number</source>
   <translation>on répond à %1 par un nombre</translation>
  </message>
  <message>
   <source>give it in %1</source>
   <translation>donnez-le en %1</translation>
  </message>
  <message>
   <source>%1 is answered by what was seen or heard</source>
   <translation>on répond à %1 par ce qui a été vu ou entendu</translation>
  </message>
  <message>
   <source>write it in one line, in your own words</source>
   <translation>écrivez-le en une ligne, avec vos mots</translation>
  </message>
  <message>
   <source>%1 needs a file's SHA-256</source>
   <translation>%1 demande le SHA-256 d'un fichier</translation>
  </message>
  <message>
   <source>choose the file</source>
   <translation>choisissez le fichier</translation>
  </message>
  <message>
   <source>%1 rests on %2, which is %3: %4</source>
   <translation>%1 repose sur %2, qui est %3 : %4</translation>
  </message>
  <message>
   <source>open</source>
   <translation>à faire</translation>
  </message>
  <message>
   <source>due</source>
   <translation>dû</translation>
  </message>
  <message>
   <source>expired</source>
   <translation>expiré</translation>
  </message>
  <message>
   <source>broken</source>
   <translation>rompu</translation>
  </message>
  <message>
   <source>refused</source>
   <translation>refusé</translation>
  </message>
  <message>
   <source>see to that first</source>
   <translation>occupez-vous-en d'abord</translation>
  </message>
  <message>
   <source>%1 is not answered by anyone: it follows from what is</source>
   <translation>personne ne répond à %1 : cela suit de ce qui est</translation>
  </message>
  <message>
   <source>read the wind and enter that</source>
   <translation>mesurez le vent et saisissez-le</translation>
  </message>
  <message>
   <source>see to what it is about, and it will hold by itself</source>
   <translation>occupez-vous de la chose, et cela tiendra de soi-même</translation>
  </message>
  <message>
   <source>it does not say what it confirms</source>
   <translation>cela ne dit pas ce que cela confirme</translation>
  </message>
  <message>
   <source>name the entry</source>
   <translation>nommez l'entrée</translation>
  </message>
  <message>
   <source>entry %1 waits for no second signature</source>
   <translation>l'entrée %1 n'attend pas de seconde signature</translation>
  </message>
  <message>
   <source>look at the list of those that wait; what was broken since is done anew</source>
   <translation>regardez la liste de celles qui attendent ; ce qui s'est rompu depuis se refait</translation>
  </message>
  <message>
   <source>one person cannot sign twice</source>
   <translation>une personne ne peut signer deux fois</translation>
  </message>
  <message>
   <source>let somebody else look and sign</source>
   <translation>qu'un autre regarde et signe</translation>
  </message>
  <message>
   <source>what is confirmed is not what was claimed: %1</source>
   <translation>ce qui est confirmé n'est pas ce qui a été affirmé : %1</translation>
  </message>
  <message>
   <source>look again and confirm what was claimed, or let it be claimed anew</source>
   <translation>regardez à nouveau et confirmez ce qui a été affirmé, ou faites-le affirmer à nouveau</translation>
  </message>
  <message>
   <source>the first signature is too old to be confirmed</source>
   <translation>la première signature est trop ancienne pour être confirmée</translation>
  </message>
  <message>
   <source>sign both anew</source>
   <translation>signez les deux à nouveau</translation>
  </message>
  <message>
   <source>the checklist has no such stage: %1</source>
   <translation>la liste n'a pas d'étape de ce nom : %1</translation>
  </message>
  <message>
   <source>choose one of these: %1</source>
   <translation>choisissez parmi : %1</translation>
  </message>
  <message>
   <source>%1 has closed this pause already</source>
   <translation>%1 a déjà fermé cette pause</translation>
  </message>
  <message>
   <source>go on with the next stage</source>
   <translation>passez à l'étape suivante</translation>
  </message>
  <message>
   <source>the release itself closes this stage</source>
   <translation>l'autorisation elle-même ferme cette étape</translation>
  </message>
  <message>
   <source>sign the release</source>
   <translation>signez l'autorisation</translation>
  </message>
  <message>
   <source>see to it first, or let the lead waive it with a reason</source>
   <translation>occupez-vous-en d'abord, ou que le responsable y déroge avec un motif</translation>
  </message>
  <message>
   <source>the checklist asks nobody for the wind</source>
   <translation>la liste ne demande le vent à personne</translation>
  </message>
  <message>
   <source>keep it as a note, or begin a record with a checklist that has a wind item</source>
   <translation>gardez-le comme note, ou commencez un registre avec une liste qui a un point de vent</translation>
  </message>
  <message>
   <source>a mean wind is over 10 min or 2 min</source>
   <translation>un vent moyen est sur 10 min ou 2 min</translation>
  </message>
  <message>
   <source>give one of the two</source>
   <translation>donnez l'un des deux</translation>
  </message>
  <message>
   <source>a wind has a mean, and gusts no lower than it, up to 120 m/s</source>
   <translation>un vent a une moyenne, et des rafales pas plus faibles, jusqu'à 120 m/s</translation>
  </message>
  <message>
   <source>give both in m/s, and the highest 3 s mean as the gust</source>
   <translation>donnez les deux en m/s, et la plus haute moyenne sur 3 s comme rafale</translation>
  </message>
  <message>
   <source>it does not say when the show is</source>
   <translation>cela ne dit pas quand est le spectacle</translation>
  </message>
  <message>
   <source>give a date and a time of day</source>
   <translation>donnez une date et une heure</translation>
  </message>
  <message>
   <source>no clock on the wall is so far from UTC</source>
   <translation>aucune horloge n'est si loin d'UTC</translation>
  </message>
  <message>
   <source>give its distance from UTC, 14 h at most</source>
   <translation>donnez son écart à UTC, 14 h au plus</translation>
  </message>
  <message>
   <source>there is no such key: %1</source>
   <translation>il n'y a pas de clé de ce nom : %1</translation>
  </message>
  <message>
   <source>begin a record with a checklist that has one</source>
   <translation>commencez un registre avec une liste qui en a une</translation>
  </message>
  <message>
   <source>let its owner take it back first</source>
   <translation>que son propriétaire la reprenne d'abord</translation>
  </message>
  <message>
   <source>%1 does not hold this key, %2 does</source>
   <translation>%1 n'a pas cette clé, c'est %2</translation>
  </message>
  <message>
   <source>%1 does not hold this key, the %2 does</source>
   <translation>%1 n'a pas cette clé, elle est dans : %2</translation>
  </message>
  <message>
   <source>let the holder do it</source>
   <translation>que celui qui la détient le fasse</translation>
  </message>
  <message>
   <source>take it from there first</source>
   <translation>prenez-la d'abord de là</translation>
  </message>
  <message>
   <source>take it from there</source>
   <translation>prenez-la de là</translation>
  </message>
  <message>
   <source>let them come out and sign out first</source>
   <translation>qu'ils sortent et signent leur sortie d'abord</translation>
  </message>
  <message>
   <source>a hold is on: %1</source>
   <translation>un arrêt est en cours : %1</translation>
  </message>
  <message>
   <source>let the lead lift it first</source>
   <translation>que le responsable le lève d'abord</translation>
  </message>
  <message>
   <source>%1 is in the %2, in nobody's hand</source>
   <translation>%1 est dans %2, dans la main de personne</translation>
  </message>
  <message>
   <source>%1 holds this key already</source>
   <translation>%1 a déjà cette clé</translation>
  </message>
  <message>
   <source>let somebody else sign for it</source>
   <translation>qu'un autre signe pour elle</translation>
  </message>
  <message>
   <source>%1 holds this key</source>
   <translation>%1 a cette clé</translation>
  </message>
  <message>
   <source>sign for it from them</source>
   <translation>signez en la recevant de cette personne</translation>
  </message>
  <message>
   <source>the receiver has not signed for it</source>
   <translation>le receveur n'a pas signé pour elle</translation>
  </message>
  <message>
   <source>let the receiver sign first</source>
   <translation>que le receveur signe d'abord</translation>
  </message>
  <message>
   <source>the key has no such place: %1</source>
   <translation>la clé n'a pas de place de ce nom : %1</translation>
  </message>
  <message>
   <source>let them hand it over</source>
   <translation>qu'ils la remettent</translation>
  </message>
  <message>
   <source>the key is in the %1</source>
   <translation>la clé est dans : %1</translation>
  </message>
  <message>
   <source>an enrolment needs a name, a role and a key</source>
   <translation>une inscription demande un nom, un rôle et une clé</translation>
  </message>
  <message>
   <source>give all three</source>
   <translation>donnez les trois</translation>
  </message>
  <message>
   <source>1,000 people are enrolled, and a day takes no more</source>
   <translation>1 000 personnes sont inscrites, et une journée n'en prend pas plus</translation>
  </message>
  <message>
   <source>begin another record</source>
   <translation>commencez un autre registre</translation>
  </message>
  <message>
   <source>%1 is enrolled as %2 already</source>
   <translation>%1 est déjà inscrit comme %2</translation>
  </message>
  <message>
   <source>let them sign as that</source>
   <translation>qu'ils signent comme tel</translation>
  </message>
  <message>
   <source>%1 cannot be enrolled: name or key is that of %2</source>
   <translation>%1 ne peut être inscrit : le nom ou la clé est de %2</translation>
  </message>
  <message>
   <source>one name has one key: give the other person another name, or the key of this name</source>
   <translation>un nom a une clé : donnez un autre nom à l'autre personne, ou la clé de ce nom</translation>
  </message>
  <message>
   <source>it does not say who</source>
   <translation>cela ne dit pas qui</translation>
  </message>
  <message>
   <source>give the name</source>
   <translation>donnez le nom</translation>
  </message>
  <message>
   <source>%1 is not in the field</source>
   <translation>%1 n'est pas sur le terrain</translation>
  </message>
  <message>
   <source>%1 has no tag out</source>
   <translation>%1 n'a pas d'étiquette posée</translation>
  </message>
  <message>
   <source>look at who is out, and write the name as it stands there</source>
   <translation>regardez qui est dehors, et écrivez le nom comme il y est</translation>
  </message>
  <message>
   <source>only the owner can do this alone</source>
   <translation>seul le propriétaire peut le faire seul</translation>
  </message>
  <message>
   <source>give a reason, and let a second person sign</source>
   <translation>donnez un motif, et qu'une seconde personne signe</translation>
  </message>
  <message>
   <source>the tag of %1 is back: %2</source>
   <translation>l'étiquette de %1 est revenue : %2</translation>
  </message>
  <message>
   <source>%1 is out of the field: %2</source>
   <translation>%1 est sorti du terrain : %2</translation>
  </message>
  <message>
   <source>no hold is on</source>
   <translation>aucun arrêt n'est en cours</translation>
  </message>
  <message>
   <source>go on</source>
   <translation>continuez</translation>
  </message>
  <message>
   <source>another hold was called since: %1</source>
   <translation>un autre arrêt a été appelé depuis : %1</translation>
  </message>
  <message>
   <source>see to that one too, and lift both</source>
   <translation>occupez-vous aussi de celui-là, et levez les deux</translation>
  </message>
  <message>
   <source>a hold is lifted with a reason</source>
   <translation>un arrêt se lève avec un motif</translation>
  </message>
  <message>
   <source>write why</source>
   <translation>écrivez pourquoi</translation>
  </message>
  <message>
   <source>a release stands already</source>
   <translation>une autorisation tient déjà</translation>
  </message>
  <message>
   <source>take it back first if it must be signed anew</source>
   <translation>retirez-la d'abord s'il faut la signer à nouveau</translation>
  </message>
  <message>
   <source>the release</source>
   <translation>l'autorisation</translation>
  </message>
  <message>
   <source>nothing is released, so nothing can be taken back</source>
   <translation>rien n'est autorisé, donc rien ne peut être retiré</translation>
  </message>
  <message>
   <source>call a hold if the show has to stop</source>
   <translation>appelez un arrêt si le spectacle doit s'arrêter</translation>
  </message>
  <message>
   <source>a waiver needs a reason</source>
   <translation>une dérogation demande un motif</translation>
  </message>
  <message>
   <source>%1 cannot be waived by anyone</source>
   <translation>personne ne peut déroger à %1</translation>
  </message>
  <message>
   <source>see to it that it holds</source>
   <translation>faites en sorte que cela tienne</translation>
  </message>
  <message>
   <source>%1 needs no waiver: it holds</source>
   <translation>%1 n'a pas besoin de dérogation : cela tient</translation>
  </message>
  <message>
   <source>%1 waived: %2</source>
   <translation>dérogé, %1 : %2</translation>
  </message>
  <message>
   <source>the plan has no such pin: %1</source>
   <translation>le plan n'a pas de broche de ce nom : %1</translation>
  </message>
  <message>
   <source>write it as M01/R1/P05</source>
   <translation>écrivez-la comme M01/R1/P05</translation>
  </message>
  <message>
   <source>the pin fits and needs no waiver</source>
   <translation>la broche est conforme et n'a pas besoin de dérogation</translation>
  </message>
  <message>
   <source>%1 reads %2 by now</source>
   <translation>%1 se lit maintenant : %2</translation>
  </message>
  <message>
   <source>look at it again, and waive that if it must be</source>
   <translation>regardez-la à nouveau, et dérogez si nécessaire</translation>
  </message>
  <message>
   <source>it is not signed</source>
   <translation>ce n'est pas signé</translation>
  </message>
  <message>
   <source>sign it</source>
   <translation>signez</translation>
  </message>
  <message>
   <source>the checklist has no such item: %1</source>
   <translation>la liste n'a pas de point de ce nom : %1</translation>
  </message>
  <message>
   <source>write its id as the checklist has it</source>
   <translation>écrivez son identifiant comme dans la liste</translation>
  </message>
  <message>
   <source>"%1" has not begun: nothing was released yet</source>
   <translation>« %1 » n'a pas commencé : rien n'a encore été autorisé</translation>
  </message>
  <message>
   <source>"%1" has not begun: the pause before it is not closed</source>
   <translation>« %1 » n'a pas commencé : la pause d'avant n'est pas fermée</translation>
  </message>
  <message>
   <source>it begins with the release</source>
   <translation>cela commence avec l'autorisation</translation>
  </message>
  <message>
   <source>finish "%1" and close its pause</source>
   <translation>finissez « %1 » et fermez sa pause</translation>
  </message>
  <message>
   <source>the gate is shut: %1</source>
   <translation>la porte est fermée : %1</translation>
  </message>
  <message>
   <source>see to that and %1 more thing</source>
   <translation>occupez-vous de cela et de %1 autre chose</translation>
  </message>
  <message>
   <source>see to that and %1 more things</source>
   <translation>occupez-vous de cela et de %1 autres choses</translation>
  </message>
  <message>
   <source>nobody is enrolled as %1 under the name %2</source>
   <translation>personne n'est inscrit comme %1 sous le nom %2</translation>
  </message>
  <message>
   <source>(no role)</source>
   <translation>(sans rôle)</translation>
  </message>
  <message>
   <source>(no name)</source>
   <translation>(sans nom)</translation>
  </message>
  <message>
   <source>enrol the person first</source>
   <translation>inscrivez d'abord la personne</translation>
  </message>
  <message>
   <source>%1 may not do this as %2</source>
   <translation>%1 ne peut pas faire cela comme %2</translation>
  </message>
  <message>
   <source>let one of the crew do it</source>
   <translation>que l'un de l'équipe le fasse</translation>
  </message>
  <message>
   <source>let a %1 do it</source>
   <translation>que le fasse : %1</translation>
  </message>
  <message>
   <source>a key cannot be named so</source>
   <translation>une clé ne peut être nommée ainsi</translation>
  </message>
  <message>
   <source>write the name in letters, with single spaces between</source>
   <translation>écrivez le nom en lettres, avec de simples espaces</translation>
  </message>
  <message>
   <source>there is no key of %1</source>
   <translation>il n'y a pas de clé de %1</translation>
  </message>
  <message>
   <source>make one with: walkdown crew add</source>
   <translation>faites-en une avec : walkdown crew add</translation>
  </message>
  <message>
   <source>there is no such record</source>
   <translation>il n'y a pas de registre de ce nom</translation>
  </message>
  <message>
   <source>open a new one with its show</source>
   <translation>ouvrez-en un nouveau avec son spectacle</translation>
  </message>
  <message>
   <source>something else was written at the same moment; look again</source>
   <translation>autre chose a été écrit au même moment ; regardez à nouveau</translation>
  </message>
  <message>
   <source>this is no key file, or it was changed</source>
   <translation>ce n'est pas un fichier de clé, ou il a été modifié</translation>
  </message>
  <message>
   <source>take a copy of it that you kept, or make a new key</source>
   <translation>prenez une copie gardée, ou faites une nouvelle clé</translation>
  </message>
  <message>
   <source>the key cannot be read</source>
   <translation>la clé ne peut être lue</translation>
  </message>
  <message>
   <source>the key cannot be kept</source>
   <translation>la clé ne peut être gardée</translation>
  </message>
  <message>
   <source>there is a key of this name already</source>
   <translation>il y a déjà une clé de ce nom</translation>
  </message>
  <message>
   <source>choose another name</source>
   <translation>choisissez un autre nom</translation>
  </message>
  <message>
   <source>the passphrase is too short</source>
   <translation>la phrase de passe est trop courte</translation>
  </message>
  <message>
   <source>take at least 8 characters</source>
   <translation>prenez au moins 8 caractères</translation>
  </message>
  <message>
   <source>the passphrase is wrong</source>
   <translation>la phrase de passe est fausse</translation>
  </message>
  <message>
   <source>type it again</source>
   <translation>saisissez-la à nouveau</translation>
  </message>
  <message>
   <source>make room on the disk and resume the record; what was acknowledged is kept</source>
   <translation>faites de la place sur le disque et reprenez le registre ; ce qui était confirmé est gardé</translation>
  </message>
  <message>
   <source>choose a folder that you may write to</source>
   <translation>choisissez un dossier où vous pouvez écrire</translation>
  </message>
  <message>
   <source>the record cannot be written</source>
   <translation>le registre ne peut être écrit</translation>
  </message>
  <message>
   <source>the record cannot be synced</source>
   <translation>le registre ne peut être mis sur le disque</translation>
  </message>
  <message>
   <source>the record cannot be locked</source>
   <translation>le registre ne peut être verrouillé</translation>
  </message>
  <message>
   <source>the record cannot be opened</source>
   <translation>le registre ne peut être ouvert</translation>
  </message>
  <message>
   <source>the record cannot be created</source>
   <translation>le registre ne peut être créé</translation>
  </message>
  <message>
   <source>the record cannot be read</source>
   <translation>le registre ne peut être lu</translation>
  </message>
  <message>
   <source>the record cannot be read: %1</source>
   <translation>le registre ne peut être lu : %1</translation>
  </message>
  <message>
   <source>check the name</source>
   <translation>vérifiez le nom</translation>
  </message>
  <message>
   <source>another program is writing this record</source>
   <translation>un autre programme écrit ce registre</translation>
  </message>
  <message>
   <source>stop that one first, or begin another record</source>
   <translation>arrêtez-le d'abord, ou commencez un autre registre</translation>
  </message>
  <message>
   <source>there is a file of this name already</source>
   <translation>il y a déjà un fichier de ce nom</translation>
  </message>
  <message>
   <source>resume it if it is this show's record, or choose another name</source>
   <translation>reprenez-le si c'est le registre de ce spectacle, ou choisissez un autre nom</translation>
  </message>
  <message>
   <source>this file holds no sealed entry, so nothing was acknowledged in it</source>
   <translation>ce fichier n'a pas d'entrée scellée, donc rien n'y a été confirmé</translation>
  </message>
  <message>
   <source>begin a new record under another name</source>
   <translation>commencez un nouveau registre sous un autre nom</translation>
  </message>
  <message>
   <source>begin a new record</source>
   <translation>commencez un nouveau registre</translation>
  </message>
  <message>
   <source>the record belongs to another station: %1</source>
   <translation>le registre appartient à une autre station : %1</translation>
  </message>
  <message>
   <source>go on at that station, or begin a new record</source>
   <translation>continuez à cette station, ou commencez un nouveau registre</translation>
  </message>
  <message>
   <source>the record does not verify: %1</source>
   <translation>la vérification du registre échoue : %1</translation>
  </message>
  <message>
   <source>keep this file as it is, and begin a new record</source>
   <translation>gardez ce fichier tel quel, et commencez un nouveau registre</translation>
  </message>
  <message>
   <source>cannot open the port</source>
   <translation>le port ne peut être ouvert</translation>
  </message>
  <message>
   <source>cannot set the port up</source>
   <translation>le port ne peut être réglé</translation>
  </message>
  <message>
   <source>%1: no permission</source>
   <translation>%1 : pas d'autorisation</translation>
  </message>
  <message>
   <source>ask who runs this machine</source>
   <translation>demandez à qui gère cette machine</translation>
  </message>
  <message>
   <source>%1 belongs to the group %2, and you are not in it</source>
   <translation>%1 appartient au groupe %2, et vous n'en êtes pas</translation>
  </message>
  <message>
   <source>run 'sudo usermod -aG %1 "$USER"', log out and in again</source>
   <translation>lancez 'sudo usermod -aG %1 "$USER"', fermez la session et rouvrez-la</translation>
  </message>
  <message>
   <source>%1 is in use by another program</source>
   <translation>%1 est utilisé par un autre programme</translation>
  </message>
  <message>
   <source>close that program, then try again</source>
   <translation>fermez ce programme, puis réessayez</translation>
  </message>
  <message>
   <source>%1 is not there</source>
   <translation>%1 n'est pas là</translation>
  </message>
  <message>
   <source>plug the tester in, and see 'ls /dev/serial/by-id' for its name</source>
   <translation>branchez le testeur, et voyez son nom par 'ls /dev/serial/by-id'</translation>
  </message>
  <message>
   <source>%1 is not a serial port</source>
   <translation>%1 n'est pas un port série</translation>
  </message>
  <message>
   <source>see the tester's sheet for its settings, and correct the profile</source>
   <translation>voyez les réglages sur la fiche du testeur, et corrigez le profil</translation>
  </message>
  <message>
   <source>correct the TOML</source>
   <translation>corrigez le TOML</translation>
  </message>
  <message>
   <source>%1, row %2, column %3: %4</source>
   <translation>%1, ligne %2, colonne %3 : %4</translation>
  </message>
  <message>
   <source>%1, row %2: %3</source>
   <translation>%1, ligne %2 : %3</translation>
  </message>
  <message>
   <source>%1, column %2: %3</source>
   <translation>%1, colonne %2 : %3</translation>
  </message>
  <message>
   <source>line %1, %2: %3</source>
   <translation>ligne %1, %2 : %3</translation>
  </message>
  <message>
   <source>this is UTF-16; save the table as CSV in UTF-8</source>
   <translation>c'est de l'UTF-16 ; enregistrez le tableau en CSV UTF-8</translation>
  </message>
  <message>
   <source>this is a spreadsheet file; save the table as CSV in UTF-8</source>
   <translation>c'est un fichier de tableur ; enregistrez le tableau en CSV UTF-8</translation>
  </message>
  <message>
   <source>row %1 uses this pin already; give one of the two another pin</source>
   <translation>la ligne %1 utilise déjà cette broche ; donnez une autre broche à l'une des deux</translation>
  </message>
  <message>
   <source>the file is empty; the first row names the columns</source>
   <translation>le fichier est vide ; la première ligne nomme les colonnes</translation>
  </message>
  <message>
   <source>this is no column of a plan</source>
   <translation>ce n'est pas une colonne d'un plan</translation>
  </message>
  <message>
   <source>write a text in quotes</source>
   <translation>écrivez un texte entre guillemets</translation>
  </message>
  <message>
   <source>name the header that stands in the table</source>
   <translation>nommez l'en-tête qui est dans le tableau</translation>
  </message>
  <message>
   <source>this column has a header and a constant; keep one</source>
   <translation>cette colonne a un en-tête et une constante ; gardez-en un</translation>
  </message>
  <message>
   <source>cannot take the column map</source>
   <translation>la table des colonnes ne peut être prise</translation>
  </message>
  <message>
   <source>a quote stands inside a field; put the whole field in quotes and double it</source>
   <translation>un guillemet est dans un champ ; mettez tout le champ entre guillemets et doublez-le</translation>
  </message>
  <message>
   <source>a quoted field is not closed; add the missing quote</source>
   <translation>un champ entre guillemets n'est pas fermé ; ajoutez le guillemet manquant</translation>
  </message>
  <message>
   <source>save the table as UTF-8</source>
   <translation>enregistrez le tableau en UTF-8</translation>
  </message>
  <message>
   <source>this header stands there twice; keep one of the columns</source>
   <translation>cet en-tête y est deux fois ; gardez une des colonnes</translation>
  </message>
  <message>
   <source>the table has no column '%1'; add it, or map another header onto it with a column map</source>
   <translation>le tableau n'a pas de colonne '%1' ; ajoutez-la, ou donnez-lui un autre en-tête par une table des colonnes</translation>
  </message>
  <message>
   <source>the igniter file has none</source>
   <translation>le fichier d'inflammateurs n'en a aucun</translation>
  </message>
  <message>
   <source>name one of the igniter file: %1</source>
   <translation>nommez-en un du fichier d'inflammateurs : %1</translation>
  </message>
  <message>
   <source>this field is beyond the last header; a separator is too many</source>
   <translation>ce champ est au-delà du dernier en-tête ; il y a un séparateur de trop</translation>
  </message>
  <message>
   <source>write a whole number from 1 to 9999, as 7 or %1</source>
   <translation>écrivez un entier de 1 à 9999, comme 7 ou %1</translation>
  </message>
  <message>
   <source>name the cue that this pin fires</source>
   <translation>nommez le cue que cette broche met à feu</translation>
  </message>
  <message>
   <source>write how many igniters, a whole number from 0 to 999</source>
   <translation>écrivez combien d'inflammateurs, un entier de 0 à 999</translation>
  </message>
  <message>
   <source>write AWG24, 0.5mm2, or the name of a [wire] of the igniter file</source>
   <translation>écrivez AWG24, 0.5mm2, ou le nom d'un [wire] du fichier d'inflammateurs</translation>
  </message>
  <message>
   <source>the plan has more wire sizes than can be told apart; use fewer</source>
   <translation>le plan a plus de sections de fil qu'on ne peut en distinguer ; prenez-en moins</translation>
  </message>
  <message>
   <source>write the one-way length in metres, from 0 to 10000, as 12.5</source>
   <translation>écrivez la longueur simple en mètres, de 0 à 10000, comme 12.5</translation>
  </message>
  <message>
   <source>write series or parallel</source>
   <translation>écrivez series ou parallel</translation>
  </message>
  <message>
   <source>write the calibre in millimetres, above 0 and up to 1000</source>
   <translation>écrivez le calibre en millimètres, au-dessus de 0 et jusqu'à 1000</translation>
  </message>
  <message>
   <source>no igniter is planned here, so this pin must read open</source>
   <translation>aucun inflammateur n'est prévu ici, donc cette broche doit se lire ouverte</translation>
  </message>
  <message>
   <source>a lead without a wire counts as 0 ohm; name its wire</source>
   <translation>une ligne sans fil compte pour 0 ohm ; nommez son fil</translation>
  </message>
  <message>
   <source>a wire without a length counts as 0 ohm; give lead_m</source>
   <translation>un fil sans longueur compte pour 0 ohm ; donnez lead_m</translation>
  </message>
  <message>
   <source>no cue has a position, so no walking order can be given</source>
   <translation>aucun cue n'a de position, donc aucun ordre de marche n'est possible</translation>
  </message>
  <message>
   <source>cue %1 has no position</source>
   <translation>le cue %1 n'a pas de position</translation>
  </message>
  <message>
   <source>module %1 has %2 rails by %3</source>
   <translation>le module %1 a %2 rails d'après %3</translation>
  </message>
  <message>
   <source>this rail has %1 pins by %2</source>
   <translation>ce rail a %1 broches d'après %2</translation>
  </message>
  <message>
   <source>the modules have more rails or pins than a field can; state their sizes with a module file, or correct the numbers</source>
   <translation>les modules ont plus de rails ou de broches qu'un terrain ne peut ; donnez leurs tailles dans un fichier de modules, ou corrigez les nombres</translation>
  </message>
  <message>
   <source>give rails = [pins on rail 1, pins on rail 2, ...], each from 1 to 9999</source>
   <translation>donnez rails = [broches du rail 1, broches du rail 2, ...], chacun de 1 à 9999</translation>
  </message>
  <message>
   <source>write a table [%1]</source>
   <translation>écrivez une table [%1]</translation>
  </message>
  <message>
   <source>name a module from 1 to 9999, as [module.7]</source>
   <translation>nommez un module de 1 à 9999, comme [module.7]</translation>
  </message>
  <message>
   <source>this module is there twice</source>
   <translation>ce module y est deux fois</translation>
  </message>
  <message>
   <source>cannot take the module sizes</source>
   <translation>les tailles des modules ne peuvent être prises</translation>
  </message>
  <message>
   <source>no_fire_a is above all_fire_a; look at the data sheet again</source>
   <translation>no_fire_a dépasse all_fire_a ; regardez à nouveau la fiche</translation>
  </message>
  <message>
   <source>test_max_a is above no_fire_a; look at the data sheet again</source>
   <translation>test_max_a dépasse no_fire_a ; regardez à nouveau la fiche</translation>
  </message>
  <message>
   <source>give bridge_ohm = [least, most] in ohm</source>
   <translation>donnez bridge_ohm = [le moins, le plus] en ohms</translation>
  </message>
  <message>
   <source>give ohm_per_km = [least, most] of one conductor</source>
   <translation>donnez ohm_per_km = [le moins, le plus] d'un conducteur</translation>
  </message>
  <message>
   <source>give volt = [least, most] under load</source>
   <translation>donnez volt = [le moins, le plus] en charge</translation>
  </message>
  <message>
   <source>give source_ohm of the source and its cable; 0 if none</source>
   <translation>donnez source_ohm de la source et de son câble ; 0 s'il n'y en a pas</translation>
  </message>
  <message>
   <source>cannot take the igniter file</source>
   <translation>le fichier d'inflammateurs ne peut être pris</translation>
  </message>
  <message>
   <source>write a number from %1 to %2</source>
   <translation>écrivez un nombre de %1 à %2</translation>
  </message>
  <message>
   <source>write a whole number from %1 to %2</source>
   <translation>écrivez un entier de %1 à %2</translation>
  </message>
  <message>
   <source>write [least, most], least first, from %1 to %2</source>
   <translation>écrivez [le moins, le plus], le moins d'abord, de %1 à %2</translation>
  </message>
  <message>
   <source>this is no key; did you mean %1?</source>
   <translation>ce n'est pas un mot-clé ; vouliez-vous dire %1 ?</translation>
  </message>
  <message>
   <source>the site is over 100 km across</source>
   <translation>le terrain fait plus de 100 km de large</translation>
  </message>
  <message>
   <source>check longitude and latitude of each place</source>
   <translation>vérifiez la longitude et la latitude de chaque lieu</translation>
  </message>
  <message>
   <source>not a GeoJSON FeatureCollection</source>
   <translation>ce n'est pas une FeatureCollection GeoJSON</translation>
  </message>
  <message>
   <source>export the site as GeoJSON (RFC 7946)</source>
   <translation>exportez le terrain en GeoJSON (RFC 7946)</translation>
  </message>
  <message>
   <source>a position has no name</source>
   <translation>une position n'a pas de nom</translation>
  </message>
  <message>
   <source>name it as the plan does</source>
   <translation>nommez-la comme dans le plan</translation>
  </message>
  <message>
   <source>a ring is not closed</source>
   <translation>un anneau n'est pas fermé</translation>
  </message>
  <message>
   <source>end it with the place it began with</source>
   <translation>finissez-le au lieu où il a commencé</translation>
  </message>
  <message>
   <source>a feature has no role</source>
   <translation>un feature n'a pas de rôle</translation>
  </message>
  <message>
   <source>write position, audience, structure, control or exclusion</source>
   <translation>écrivez position, audience, structure, control ou exclusion</translation>
  </message>
  <message>
   <source>the show has mistakes</source>
   <translation>le spectacle a des fautes</translation>
  </message>
  <message>
   <source>mend them first</source>
   <translation>corrigez-les d'abord</translation>
  </message>
  <message>
   <source>Choose a plan first</source>
   <translation>Choisissez d'abord un plan</translation>
  </message>
  <message>
   <source>%1 pins on %2 modules, %3 positions</source>
   <translation>%1 broches sur %2 modules, %3 positions</translation>
  </message>
 </context>
 <context>
  <name>Session</name>
  <message>
   <source>Written as entry %1.</source>
   <translation>Écrit, entrée %1.</translation>
  </message>
 </context>
 <context>
  <name>Sheet</name>
  <message>
   <source>From %1, about %2 m in straight lines.</source>
   <translation>Depuis %1, environ %2 m en ligne droite.</translation>
  </message>
  <message>
   <source>Walk sheet</source>
   <translation>Feuille de marche</translation>
  </message>
  <message>
   <source>Made %1, record %2. Clear the danger area before a reading.</source>
   <translation>Faite %1, registre %2. Évacuer la zone de danger avant une mesure.</translation>
  </message>
 </context>
 <context>
  <name>SignDialog</name>
  <message>
   <source>Sign</source>
   <translation>Signer</translation>
  </message>
  <message>
   <source>Who signs</source>
   <translation>Qui signe</translation>
  </message>
  <message>
   <source>Passphrase of that person's key</source>
   <translation>Phrase de passe de la clé de cette personne</translation>
  </message>
  <message>
   <source>Cancel</source>
   <translation>Annuler</translation>
  </message>
  <message>
   <source>Passphrase</source>
   <translation>Phrase de passe</translation>
  </message>
  <message>
   <source>Nobody who may sign this is enrolled with a key on this computer.</source>
   <translation>Personne qui puisse signer ceci n'est inscrit avec une clé sur cet ordinateur.</translation>
  </message>
  <message>
   <source>A reason is needed.</source>
   <translation>Un motif est nécessaire.</translation>
  </message>
  <message>
   <source>Opening the key …</source>
   <translation>Ouverture de la clé …</translation>
  </message>
  <message>
   <source>Signed and written as entry %1.</source>
   <translation>Signé et écrit, entrée %1.</translation>
  </message>
 </context>
 <context>
  <name>StandingLine</name>
  <message>
   <source>NOT WRITTEN: %1</source>
   <translation>PAS ÉCRIT : %1</translation>
  </message>
  <message>
   <source>The release fell: %1</source>
   <translation>L'autorisation est tombée : %1</translation>
  </message>
  <message>
   <source>No release yet: %1</source>
   <translation>Pas encore d'autorisation : %1</translation>
  </message>
  <message>
   <source>What stands</source>
   <translation>Ce qui est en cours</translation>
  </message>
 </context>
 <context>
  <name>StartPage</name>
  <message>
   <source>Reads and records the show day. It never fires, arms or transmits.</source>
   <translation>Lit et consigne le jour du spectacle. Ne tire, n'arme et n'émet jamais.</translation>
  </message>
  <message>
   <source>Open a record …</source>
   <translation>Ouvrir un registre …</translation>
  </message>
  <message>
   <source>New show …</source>
   <translation>Nouveau spectacle …</translation>
  </message>
  <message>
   <source>Go on with the last record</source>
   <translation>Continuer avec le dernier registre</translation>
  </message>
 </context>
 <context>
  <name>Strip</name>
  <message>
   <source>Call a hold</source>
   <translation>Appeler un arrêt</translation>
  </message>
  <message>
   <source>Call a hold: anyone, at once</source>
   <translation>Appeler un arrêt : n'importe qui, aussitôt</translation>
  </message>
  <message>
   <source>Time to show</source>
   <translation>Avant le spectacle</translation>
  </message>
  <message>
   <source>The day</source>
   <translation>La journée</translation>
  </message>
  <message>
   <source>Release</source>
   <translation>Autorisation</translation>
  </message>
  <message>
   <source>Arming key</source>
   <translation>Clé d'armement</translation>
  </message>
  <message>
   <source>In the field</source>
   <translation>Sur le terrain</translation>
  </message>
  <message>
   <source>Wind</source>
   <translation>Vent</translation>
  </message>
  <message>
   <source>Tester</source>
   <translation>Testeur</translation>
  </message>
  <message>
   <source>Last written</source>
   <translation>Dernier écrit</translation>
  </message>
  <message>
   <source>not set</source>
   <translation>pas fixée</translation>
  </message>
  <message>
   <source>show at %1</source>
   <translation>spectacle à %1</translation>
  </message>
  <message>
   <source>%1 past</source>
   <translation>depuis %1</translation>
  </message>
  <message>
   <source>hold by %1: %2</source>
   <translation>arrêt de %1 : %2</translation>
  </message>
  <message>
   <source>stands until something breaks it</source>
   <translation>tient jusqu'à ce que quelque chose la rompe</translation>
  </message>
  <message>
   <source>stands until %1 (%2)</source>
   <translation>tient jusqu'à %1 (%2)</translation>
  </message>
  <message>
   <source>signed by %1 and %2</source>
   <translation>signée par %1 et %2</translation>
  </message>
  <message>
   <source>waits for the second signature</source>
   <translation>attend la seconde signature</translation>
  </message>
  <message numerus="yes">
   <source>not possible: %n reason(s)</source>
   <translation>
    <numerusform>pas possible : %n raison</numerusform>
    <numerusform>pas possible : %n raisons</numerusform>
   </translation>
  </message>
  <message>
   <source>possible</source>
   <translation>possible</translation>
  </message>
  <message>
   <source>possible, would stand until %1 (%2)</source>
   <translation>possible, tiendrait jusqu'à %1 (%2)</translation>
  </message>
  <message>
   <source>offered to %1</source>
   <translation>offerte à %1</translation>
  </message>
  <message>
   <source>no key in the checklist</source>
   <translation>pas de clé dans la liste</translation>
  </message>
  <message>
   <source>nobody</source>
   <translation>personne</translation>
  </message>
  <message>
   <source>%1, gust %2 m/s</source>
   <translation>%1, rafale %2 m/s</translation>
  </message>
  <message>
   <source>not measured</source>
   <translation>pas mesuré</translation>
  </message>
  <message>
   <source>by %1</source>
   <translation>par %1</translation>
  </message>
  <message>
   <source>no port chosen</source>
   <translation>aucun port choisi</translation>
  </message>
  <message>
   <source>quiet</source>
   <translation>silencieux</translation>
  </message>
  <message>
   <source>reading</source>
   <translation>lecture</translation>
  </message>
  <message>
   <source>unplugged</source>
   <translation>débranché</translation>
  </message>
  <message>
   <source>not open</source>
   <translation>pas ouvert</translation>
  </message>
  <message>
   <source>NOT WRITTEN</source>
   <translation>PAS ÉCRIT</translation>
  </message>
  <message>
   <source>Views</source>
   <translation>Vues</translation>
  </message>
  <message>
   <source>Show in</source>
   <translation>Dans</translation>
  </message>
  <message>
   <source>Day</source>
   <translation>Jour</translation>
  </message>
  <message>
   <source>Key</source>
   <translation>Clé</translation>
  </message>
  <message>
   <source>Field</source>
   <translation>Terrain</translation>
  </message>
  <message>
   <source>Last</source>
   <translation>Dernier</translation>
  </message>
  <message>
   <source>%1, too short</source>
   <translation>%1, trop court</translation>
  </message>
  <message numerus="yes">
   <source>%n inside</source>
   <translation>
    <numerusform>%n dedans</numerusform>
    <numerusform>%n dedans</numerusform>
   </translation>
  </message>
  <message>
   <source>somebody</source>
   <translation>quelqu'un</translation>
  </message>
  <message>
   <source>hold by %1, no reason given</source>
   <translation>arrêt de %1, sans raison donnée</translation>
  </message>
 </context>
 <context>
  <name>TesterView</name>
  <message>
   <source>(no plain text)</source>
   <translation>(pas du texte lisible)</translation>
  </message>
  <message>
   <source>Lines as they came and what each became; all are on disk</source>
   <translation>Lignes telles que reçues et ce que chacune est devenue ; toutes sont sur le disque</translation>
  </message>
  <message>
   <source>Lines of the tester</source>
   <translation>Lignes du testeur</translation>
  </message>
  <message>
   <source>Port: found by name, none is opened before you press Listen</source>
   <translation>Port : trouvé par son nom, aucun n'est ouvert avant que vous pressiez Écouter</translation>
  </message>
  <message>
   <source>Port</source>
   <translation>Port</translation>
  </message>
  <message>
   <source>Listen</source>
   <translation>Écouter</translation>
  </message>
  <message>
   <source>Stop</source>
   <translation>Cesser</translation>
  </message>
  <message>
   <source>Look for ports</source>
   <translation>Chercher des ports</translation>
  </message>
  <message>
   <source>Learn a format …</source>
   <translation>Apprendre un format …</translation>
  </message>
  <message>
   <source> above range</source>
   <translation> hors gamme</translation>
  </message>
  <message>
   <source> %1 ohm</source>
   <translation> %1 ohm</translation>
  </message>
  <message>
   <source>not taken: %1</source>
   <translation>pas prise : %1</translation>
  </message>
 </context>
 <context>
  <name>Timeline</name>
  <message>
   <source>holds until something breaks it</source>
   <translation>tient jusqu'à ce que quelque chose le rompe</translation>
  </message>
  <message>
   <source>holds until %1 (%2)</source>
   <translation>tient jusqu'à %1 (%2)</translation>
  </message>
  <message>
   <source>late: should have begun by %1</source>
   <translation>en retard : aurait dû commencer à %1</translation>
  </message>
  <message>
   <source>begin by %1 (%2 left)</source>
   <translation>commencer avant %1 (encore %2)</translation>
  </message>
  <message>
   <source>ends first: %1</source>
   <translation>finit en premier : %1</translation>
  </message>
 </context>
 <context>
  <name>TimelineView</name>
  <message>
   <source>Timeline of the release</source>
   <translation>Chronologie de l'autorisation</translation>
  </message>
  <message>
   <source>No show time is set, so nothing can be planned backwards from it.</source>
   <translation>Aucune heure de spectacle n'est fixée ; rien ne peut être planifié à rebours.</translation>
  </message>
  <message>
   <source>show %1</source>
   <translation>spectacle %1</translation>
  </message>
  <message>
   <source>end %1</source>
   <translation>fin %1</translation>
  </message>
  <message>
   <source>now %1</source>
   <translation>maintenant %1</translation>
  </message>
 </context>
 <context>
  <name>TwoPane</name>
  <message>
   <source>Back to the list</source>
   <translation>Retour à la liste</translation>
  </message>
 </context>
 <context>
  <name>Views</name>
  <message>
   <source>Checklist</source>
   <translation>Liste</translation>
  </message>
  <message>
   <source>Crew</source>
   <translation>Équipe</translation>
  </message>
  <message>
   <source>Field</source>
   <translation>Terrain</translation>
  </message>
  <message>
   <source>Faults</source>
   <translation>Défauts</translation>
  </message>
  <message>
   <source>Tester</source>
   <translation>Testeur</translation>
  </message>
  <message>
   <source>Weather</source>
   <translation>Météo</translation>
  </message>
  <message>
   <source>Record</source>
   <translation>Registre</translation>
  </message>
  <message>
   <source>Report</source>
   <translation>Rapport</translation>
  </message>
 </context>
 <context>
  <name>WalkPanel</name>
  <message>
   <source>Now probe</source>
   <translation>Mesurer maintenant</translation>
  </message>
  <message>
   <source>Back one pin</source>
   <translation>Une broche en arrière</translation>
  </message>
  <message>
   <source>Skip: leave it unread</source>
   <translation>Passer : la laisser non lue</translation>
  </message>
  <message>
   <source>The probe is on it and it reads open</source>
   <translation>La pointe est dessus et elle lit ouvert</translation>
  </message>
  <message>
   <source>All pins are walked</source>
   <translation>Toutes les broches sont faites</translation>
  </message>
  <message>
   <source>Lift the probe first. %1 of %2</source>
   <translation>Lever d'abord la pointe. %1 sur %2</translation>
  </message>
  <message>
   <source>%1 of %2; the value is taken when it is steady</source>
   <translation>%1 sur %2 ; la valeur est prise quand elle est stable</translation>
  </message>
 </context>
 <context>
  <name>WeatherView</name>
  <message>
   <source>Wind</source>
   <translation>Vent</translation>
  </message>
  <message>
   <source>Solid line and discs: mean. Broken line and crosses: gust.</source>
   <translation>Trait plein et disques : moyenne. Trait brisé et croix : rafale.</translation>
  </message>
  <message>
   <source>Enter wind read by hand …</source>
   <translation>Saisir le vent lu à la main …</translation>
  </message>
  <message>
   <source>Thunder</source>
   <translation>Tonnerre</translation>
  </message>
  <message>
   <source>Seconds from flash to thunder; empty where nobody counted</source>
   <translation>Secondes de l'éclair au tonnerre ; vide si personne n'a compté</translation>
  </message>
  <message>
   <source>Seconds from flash to thunder</source>
   <translation>Secondes de l'éclair au tonnerre</translation>
  </message>
  <message>
   <source>Thunder was heard now</source>
   <translation>Le tonnerre vient d'être entendu</translation>
  </message>
  <message>
   <source>'%1' is not a number of seconds.</source>
   <translation>« %1 » n'est pas un nombre de secondes.</translation>
  </message>
  <message>
   <source>The checklist does not ask for it.</source>
   <translation>La liste ne le demande pas.</translation>
  </message>
  <message>
   <source>No thunder is in the record.</source>
   <translation>Aucun tonnerre dans le registre.</translation>
  </message>
  <message>
   <source>%1: thunder</source>
   <translation>%1 : tonnerre</translation>
  </message>
  <message>
   <source>%1: thunder, %2 s after its flash</source>
   <translation>%1 : tonnerre, %2 s après l'éclair</translation>
  </message>
 </context>
 <context>
  <name>WindPlot</name>
  <message>
   <source>Wind and gust over the last two hours</source>
   <translation>Vent et rafale des deux dernières heures</translation>
  </message>
  <message>
   <source>now %1</source>
   <translation>maintenant %1</translation>
  </message>
  <message>
   <source>m/s</source>
   <translation>m/s</translation>
  </message>
  <message>
   <source>limit of the mean</source>
   <translation>limite de la moyenne</translation>
  </message>
  <message>
   <source>limit of the gust</source>
   <translation>limite de la rafale</translation>
  </message>
  <message>
   <source>No wind is in the record for the last two hours.</source>
   <translation>Aucun vent au registre pour les deux dernières heures.</translation>
  </message>
 </context>
 <context>
  <name>Window</name>
  <message>
   <source>Making the demonstration …</source>
   <translation>Préparation de la démonstration …</translation>
  </message>
  <message>
   <source>%1 – walkdown</source>
   <translation>%1 – walkdown</translation>
  </message>
  <message>
   <source>Open a record</source>
   <translation>Ouvrir un registre</translation>
  </message>
  <message>
   <source>Reading the record …</source>
   <translation>Lecture du registre …</translation>
  </message>
  <message>
   <source>Demo: sweep</source>
   <translation>Démo : passage</translation>
  </message>
  <message>
   <source>The simulated tester reads every pin</source>
   <translation>Le testeur simulé lit chaque broche</translation>
  </message>
  <message>
   <source>A demonstration: show, people and faults are invented. Everybody's passphrase is: %1</source>
   <translation>Une démonstration : spectacle, personnes et défauts sont inventés. La phrase de passe de chacun est : %1</translation>
  </message>
  <message>
   <source>Light and size of text</source>
   <translation>Lumière et taille du texte</translation>
  </message>
  <message>
   <source>Light and text</source>
   <translation>Lumière et texte</translation>
  </message>
  <message>
   <source>A demonstration: everybody's passphrase is: %1</source>
   <translation>Une démonstration : la phrase de passe de chacun est : %1</translation>
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
   <translation>La table de câblage, en CSV : une ligne par broche.</translation>
  </message>
  <message>
   <source>Modules</source>
   <translation>Modules</translation>
  </message>
  <message>
   <source>How many pins each rail has; may stay empty: a rail is then as long as its last planned pin.</source>
   <translation>Combien de broches a chaque rail ; peut rester vide : un rail va alors jusqu'à sa dernière broche prévue.</translation>
  </message>
  <message>
   <source>Site</source>
   <translation>Site</translation>
  </message>
  <message>
   <source>Positions and boundaries on the ground, as GeoJSON; may stay empty.</source>
   <translation>Positions et limites au sol, en GeoJSON ; peut rester vide.</translation>
  </message>
  <message>
   <source>Distances</source>
   <translation>Distances</translation>
  </message>
  <message>
   <source>The table of distances that holds here. The one that comes with the program is an example: yours replaces it.</source>
   <translation>La table de distances qui vaut ici. Celle du programme est un exemple : la vôtre la remplace.</translation>
  </message>
  <message>
   <source>Igniters</source>
   <translation>Inflammateurs</translation>
  </message>
  <message>
   <source>Resistances and currents. The generic file has no currents: they come from the maker's sheet.</source>
   <translation>Résistances et courants. Le fichier générique n'a pas de courants : ils viennent de la fiche du fabricant.</translation>
  </message>
  <message>
   <source>Tester</source>
   <translation>Testeur</translation>
  </message>
  <message>
   <source>How the tester's port is set and its lines look.</source>
   <translation>Réglage du port du testeur et forme de ses lignes.</translation>
  </message>
  <message>
   <source>Checklist</source>
   <translation>Liste</translation>
  </message>
  <message>
   <source>The stages and items of the day.</source>
   <translation>Les étapes et les points de la journée.</translation>
  </message>
 </context>
 <context>
  <name>words</name>
  <message>
   <source>fits</source>
   <translation>conforme</translation>
  </message>
  <message>
   <source>doubtful</source>
   <translation>douteux</translation>
  </message>
  <message>
   <source>low</source>
   <translation>bas</translation>
  </message>
  <message>
   <source>high</source>
   <translation>haut</translation>
  </message>
  <message>
   <source>open</source>
   <translation>ouvert</translation>
  </message>
  <message>
   <source>short</source>
   <translation>en court-circuit</translation>
  </message>
  <message>
   <source>unsteady</source>
   <translation>instable</translation>
  </message>
  <message>
   <source>stray</source>
   <translation>étranger</translation>
  </message>
  <message>
   <source>unread</source>
   <translation>non lu</translation>
  </message>
  <message>
   <source>stale</source>
   <translation>périmé</translation>
  </message>
  <message>
   <source>igniter missing</source>
   <translation>inflammateur manquant</translation>
  </message>
  <message>
   <source>one igniter too many</source>
   <translation>un inflammateur de trop</translation>
  </message>
  <message>
   <source>poor joint</source>
   <translation>mauvaise jonction</translation>
  </message>
  <message>
   <source>leak</source>
   <translation>fuite</translation>
  </message>
  <message>
   <source>intermittent</source>
   <translation>intermittent</translation>
  </message>
  <message>
   <source>stray load</source>
   <translation>charge étrangère</translation>
  </message>
  <message>
   <source>wrong lead</source>
   <translation>mauvaise ligne</translation>
  </message>
  <message>
   <source>wrong igniter</source>
   <translation>mauvais inflammateur</translation>
  </message>
  <message>
   <source>unknown</source>
   <translation>inconnu</translation>
  </message>
  <message>
   <source>swapped</source>
   <translation>intervertis</translation>
  </message>
  <message>
   <source>shifted</source>
   <translation>décalé</translation>
  </message>
  <message>
   <source>rail turned round</source>
   <translation>rail retourné</translation>
  </message>
  <message>
   <source>rails exchanged</source>
   <translation>rails échangés</translation>
  </message>
  <message>
   <source>modules exchanged</source>
   <translation>modules échangés</translation>
  </message>
  <message>
   <source>tester not zeroed</source>
   <translation>testeur non mis à zéro</translation>
  </message>
  <message>
   <source>wire differs</source>
   <translation>fil différent</translation>
  </message>
  <message>
   <source>to do</source>
   <translation>à faire</translation>
  </message>
  <message>
   <source>due</source>
   <translation>dû</translation>
  </message>
  <message>
   <source>holds</source>
   <translation>tient</translation>
  </message>
  <message>
   <source>expired</source>
   <translation>expiré</translation>
  </message>
  <message>
   <source>broken</source>
   <translation>rompu</translation>
  </message>
  <message>
   <source>refused</source>
   <translation>refusé</translation>
  </message>
  <message>
   <source>waived</source>
   <translation>dérogé</translation>
  </message>
  <message>
   <source>hold</source>
   <translation>arrêt</translation>
  </message>
  <message>
   <source>released</source>
   <translation>autorisé</translation>
  </message>
  <message>
   <source>ready</source>
   <translation>prêt</translation>
  </message>
  <message>
   <source>after</source>
   <translation>après</translation>
  </message>
  <message>
   <source>checking</source>
   <translation>contrôle</translation>
  </message>
 </context>
</TS>
