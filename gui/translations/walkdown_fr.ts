<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<TS version="2.1" language="fr">
 <context>
  <name>Against</name>
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
