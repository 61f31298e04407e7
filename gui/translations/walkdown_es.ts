<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<TS version="2.1" language="es">
 <context>
  <name>Against</name>
  <message>
   <source>%1 is in the field</source>
   <translation>%1 está en el campo</translation>
  </message>
  <message>
   <source>The tag of %1 is not back</source>
   <translation>La ficha de %1 no ha vuelto</translation>
  </message>
  <message>
   <source>Stage “%1” is not closed yet</source>
   <translation>La etapa «%1» aún no está cerrada</translation>
  </message>
 </context>
 <context>
  <name>AnswerForm</name>
  <message>
   <source>Value in %1</source>
   <translation>Valor en %1</translation>
  </message>
  <message>
   <source>Value in %1 (%2)</source>
   <translation>Valor en %1 (%2)</translation>
  </message>
  <message>
   <source>What you heard or saw, in words</source>
   <translation>Lo que se oyó o se vio, en palabras</translation>
  </message>
  <message>
   <source>File: a photo or the permit itself</source>
   <translation>Archivo: una foto o el permiso mismo</translation>
  </message>
  <message>
   <source>Choose the file …</source>
   <translation>Elegir el archivo …</translation>
  </message>
  <message>
   <source>Choose the file</source>
   <translation>Elegir el archivo</translation>
  </message>
  <message>
   <source>Mean over %1 min, in m/s</source>
   <translation>Media en %1 min, en m/s</translation>
  </message>
  <message>
   <source>Gust, the highest 3 s mean, in m/s</source>
   <translation>Racha, la mayor media de 3 s, en m/s</translation>
  </message>
  <message>
   <source>Choose what was seen.</source>
   <translation>Elegir lo que se vio.</translation>
  </message>
  <message>
   <source>Say what was seen.</source>
   <translation>Decir lo que se vio.</translation>
  </message>
  <message>
   <source>'%1' is not a number.</source>
   <translation>«%1» no es un número.</translation>
  </message>
  <message>
   <source>Mean and gust are numbers in m/s.</source>
   <translation>Media y racha son números en m/s.</translation>
  </message>
  <message>
   <source>mean %1 m/s, gust %2 m/s</source>
   <translation>media %1 m/s, racha %2 m/s</translation>
  </message>
 </context>
 <context>
  <name>BandPlot</name>
  <message>
   <source>Expected band and readings</source>
   <translation>Banda esperada y lecturas</translation>
  </message>
  <message>
   <source>expected, in ohm</source>
   <translation>esperado, en ohmios</translation>
  </message>
 </context>
 <context>
  <name>ChecklistView</name>
  <message>
   <source>Checklist</source>
   <translation>Lista</translation>
  </message>
  <message>
   <source>Timeline</source>
   <translation>Cronología</translation>
  </message>
 </context>
 <context>
  <name>EnrolDialog</name>
  <message>
   <source>Enrol</source>
   <translation>Inscribir</translation>
  </message>
  <message>
   <source>Enrol a person</source>
   <translation>Inscribir a una persona</translation>
  </message>
  <message>
   <source>Name: somebody with a key here, or a new name</source>
   <translation>Nombre: alguien con clave aquí, o un nombre nuevo</translation>
  </message>
  <message>
   <source>Role</source>
   <translation>Función</translation>
  </message>
  <message>
   <source>Passphrase for a new key, at least 8 characters; empty where the person has a key</source>
   <translation>Frase de paso para una clave nueva, al menos 8 caracteres; vacía si la persona ya tiene clave</translation>
  </message>
  <message>
   <source>Cancel</source>
   <translation>Cancelar</translation>
  </message>
  <message>
   <source>Name</source>
   <translation>Nombre</translation>
  </message>
  <message>
   <source>Passphrase for a new key</source>
   <translation>Frase de paso para una clave nueva</translation>
  </message>
  <message>
   <source>Enrolled as entry %1.</source>
   <translation>Inscripción escrita como entrada %1.</translation>
  </message>
 </context>
 <context>
  <name>EntryModel</name>
  <message>
   <source>Entry</source>
   <translation>Entrada</translation>
  </message>
  <message>
   <source>Time</source>
   <translation>Hora</translation>
  </message>
  <message>
   <source>Kind</source>
   <translation>Tipo</translation>
  </message>
  <message>
   <source>What it says</source>
   <translation>Lo que dice</translation>
  </message>
 </context>
 <context>
  <name>Faults</name>
  <message>
   <source>fits now</source>
   <translation>encaja ahora</translation>
  </message>
  <message>
   <source>re-hooked</source>
   <translation>reconectado</translation>
  </message>
  <message>
   <source>Read these pins again.</source>
   <translation>Leer estos pines otra vez.</translation>
  </message>
  <message>
   <source>the whole field</source>
   <translation>todo el campo</translation>
  </message>
  <message>
   <source>%1 to P%2</source>
   <translation>%1 a P%2</translation>
  </message>
  <message>
   <source>%1 and %2</source>
   <translation>%1 y %2</translation>
  </message>
  <message numerus="yes">
   <source>%1 and %n more</source>
   <translation>
    <numerusform>%1 y %n más</numerusform>
    <numerusform>%1 y %n más</numerusform>
   </translation>
  </message>
 </context>
 <context>
  <name>FaultsView</name>
  <message>
   <source>where the crew was last</source>
   <translation>donde el equipo estuvo por última vez</translation>
  </message>
  <message>
   <source>The walk begins</source>
   <translation>El recorrido empieza</translation>
  </message>
  <message>
   <source>Next to do</source>
   <translation>Siguiente por hacer</translation>
  </message>
  <message>
   <source>Faults in walking order</source>
   <translation>Fallos en orden de recorrido</translation>
  </message>
  <message>
   <source>Print the walk sheet …</source>
   <translation>Imprimir la hoja de recorrido …</translation>
  </message>
  <message>
   <source>Re-hooked: read again</source>
   <translation>Reconectado: leer otra vez</translation>
  </message>
  <message>
   <source>Show in the field</source>
   <translation>Mostrar en el campo</translation>
  </message>
  <message>
   <source>Nothing is found. That is never more than what the tester can show.</source>
   <translation>No se encuentra nada. Nunca es más de lo que el comprobador puede mostrar.</translation>
  </message>
  <message numerus="yes">
   <source>%n to do</source>
   <translation>
    <numerusform>%n por hacer</numerusform>
    <numerusform>%n por hacer</numerusform>
   </translation>
  </message>
  <message>
   <source>No fault is chosen</source>
   <translation>Ningún fallo elegido</translation>
  </message>
  <message>
   <source>Confidence: %1 %</source>
   <translation>Confianza: %1 %</translation>
  </message>
  <message>
   <source>. Or else: %1</source>
   <translation>. O bien: %1</translation>
  </message>
 </context>
 <context>
  <name>FieldCanvas</name>
  <message>
   <source>The field, drawn</source>
   <translation>El campo, dibujado</translation>
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
   <translation>Pin, como M01/R1/P05</translation>
  </message>
  <message>
   <source>Go to a pin</source>
   <translation>Ir a un pin</translation>
  </message>
  <message>
   <source>Whole field</source>
   <translation>Todo el campo</translation>
  </message>
  <message>
   <source>Nearer</source>
   <translation>Más cerca</translation>
  </message>
  <message>
   <source>Farther</source>
   <translation>Más lejos</translation>
  </message>
  <message>
   <source>There is no pin %1; a pin is written M01/R1/P05.</source>
   <translation>No hay ningún pin %1; un pin se escribe M01/R1/P05.</translation>
  </message>
 </context>
 <context>
  <name>FilePage</name>
  <message>
   <source>Choose a file …</source>
   <translation>Elegir un archivo …</translation>
  </message>
  <message>
   <source>Choose a file</source>
   <translation>Elegir un archivo</translation>
  </message>
 </context>
 <context>
  <name>Item</name>
  <message>
   <source>somebody enters the field</source>
   <translation>alguien entra en el campo</translation>
  </message>
  <message>
   <source>a pin is hooked up anew</source>
   <translation>se reconecta un pin</translation>
  </message>
  <message>
   <source>a hold is called</source>
   <translation>se pide un alto</translation>
  </message>
  <message>
   <source>the clock steps</source>
   <translation>el reloj salta</translation>
  </message>
  <message>
   <source>the computer sleeps</source>
   <translation>el ordenador duerme</translation>
  </message>
  <message>
   <source>the computer starts anew</source>
   <translation>el ordenador arranca de nuevo</translation>
  </message>
  <message>
   <source>the show time moves</source>
   <translation>cambia la hora del espectáculo</translation>
  </message>
  <message>
   <source>thunder is heard</source>
   <translation>se oye un trueno</translation>
  </message>
  <message>
   <source>a key changes hands</source>
   <translation>una llave cambia de manos</translation>
  </message>
  <message>
   <source> or </source>
   <translation> o </translation>
  </message>
  <message>
   <source>mean at most %1 m/s, gust at most %2 m/s</source>
   <translation>media como máximo %1 m/s, racha como máximo %2 m/s</translation>
  </message>
  <message>
   <source>%1 to %2</source>
   <translation>%1 a %2</translation>
  </message>
  <message>
   <source>at least %1</source>
   <translation>al menos %1</translation>
  </message>
  <message>
   <source>at most %1</source>
   <translation>como máximo %1</translation>
  </message>
  <message>
   <source>Answered by: %1</source>
   <translation>Responde: %1</translation>
  </message>
  <message>
   <source>Follows from the record; nobody answers it.</source>
   <translation>Se deduce del registro; nadie lo responde.</translation>
  </message>
  <message>
   <source>Second signature: %1</source>
   <translation>Segunda firma: %1</translation>
  </message>
  <message>
   <source>Holds for: %1</source>
   <translation>Se mantiene con: %1</translation>
  </message>
  <message>
   <source>Valid for: %1</source>
   <translation>Válido por: %1</translation>
  </message>
  <message>
   <source>Needs first: %1</source>
   <translation>Necesita antes: %1</translation>
  </message>
  <message>
   <source>Broken when: %1</source>
   <translation>Se rompe cuando: %1</translation>
  </message>
  <message>
   <source>Source: %1</source>
   <translation>Fuente: %1</translation>
  </message>
 </context>
 <context>
  <name>ItemDelegate</name>
  <message>
   <source> – ends first</source>
   <translation> – acaba primero</translation>
  </message>
 </context>
 <context>
  <name>ItemModel</name>
  <message>
   <source>not open yet</source>
   <translation>aún no abierta</translation>
  </message>
  <message>
   <source>closed by %1</source>
   <translation>cerrada por %1</translation>
  </message>
  <message>
   <source>open</source>
   <translation>abierto</translation>
  </message>
  <message>
   <source>Release</source>
   <translation>Autorización</translation>
  </message>
  <message>
   <source>%1 left</source>
   <translation>quedan %1</translation>
  </message>
  <message>
   <source>wait %1</source>
   <translation>esperar %1</translation>
  </message>
 </context>
 <context>
  <name>ItemPage</name>
  <message>
   <source>Sign this answer</source>
   <translation>Firmar esta respuesta</translation>
  </message>
  <message>
   <source>Second signature</source>
   <translation>Segunda firma</translation>
  </message>
  <message>
   <source>Waive …</source>
   <translation>Eximir …</translation>
  </message>
  <message>
   <source>Close this stage</source>
   <translation>Cerrar esta etapa</translation>
  </message>
  <message>
   <source>The pause at the end of a stage is closed by: %1. Every item of the stage must hold.</source>
   <translation>La pausa al final de una etapa la cierra: %1. Todos los puntos de la etapa deben mantenerse.</translation>
  </message>
  <message>
   <source>Not open yet: the stage before it is not closed.</source>
   <translation>Aún no abierta: la etapa anterior no está cerrada.</translation>
  </message>
  <message>
   <source>Closed by %1.</source>
   <translation>Cerrada por %1.</translation>
  </message>
  <message>
   <source>Open.</source>
   <translation>Abierta.</translation>
  </message>
  <message>
   <source>Answer: %1, by %2</source>
   <translation>Respuesta: %1, de %2</translation>
  </message>
  <message>
   <source>, confirmed by %1</source>
   <translation>, confirmado por %1</translation>
  </message>
  <message>
   <source>. Given under a second after the question.</source>
   <translation>. Dada menos de un segundo después de la pregunta.</translation>
  </message>
  <message>
   <source>Waive this item</source>
   <translation>Eximir este punto</translation>
  </message>
  <message>
   <source>This covers only the failure as it stands now: %1</source>
   <translation>Esto cubre solo el fallo tal como está ahora: %1</translation>
  </message>
  <message>
   <source>Reason</source>
   <translation>Motivo</translation>
  </message>
 </context>
 <context>
  <name>KeysPage</name>
  <message>
   <source>Keys</source>
   <translation>Llaves</translation>
  </message>
  <message>
   <source>A hand-over is signed by both, the receiver first. Until the giver has signed too, the giver holds the key.</source>
   <translation>Una entrega la firman ambos, primero quien recibe. Hasta que firme también quien da, este tiene la llave.</translation>
  </message>
  <message>
   <source>The checklist has no key.</source>
   <translation>La lista no tiene llave.</translation>
  </message>
  <message>
   <source>In the hands of %1</source>
   <translation>En manos de %1</translation>
  </message>
  <message>
   <source>In its place: %1</source>
   <translation>En su sitio: %1</translation>
  </message>
  <message>
   <source>%1 has signed for it; %2 still holds it.</source>
   <translation>%1 ha firmado para recibirla; aún la tiene %2.</translation>
  </message>
  <message>
   <source>Take it …</source>
   <translation>Tomarla …</translation>
  </message>
  <message>
   <source>Take the key</source>
   <translation>Tomar la llave</translation>
  </message>
  <message>
   <source>I take the %1.</source>
   <translation>Tomo: %1.</translation>
  </message>
  <message>
   <source>Receive it …</source>
   <translation>Recibirla …</translation>
  </message>
  <message>
   <source>Receive the key</source>
   <translation>Recibir la llave</translation>
  </message>
  <message>
   <source>I receive the %1 from %2.</source>
   <translation>Recibo: %1, de %2.</translation>
  </message>
  <message>
   <source>Give it to %1 …</source>
   <translation>Darla a %1 …</translation>
  </message>
  <message>
   <source>Give the key</source>
   <translation>Dar la llave</translation>
  </message>
  <message>
   <source>I give the %1 to %2.</source>
   <translation>Doy: %1, a %2.</translation>
  </message>
  <message>
   <source>Put it: %1 …</source>
   <translation>Ponerla: %1 …</translation>
  </message>
  <message>
   <source>Put the key down</source>
   <translation>Dejar la llave</translation>
  </message>
  <message>
   <source>I put the %1 here: %2.</source>
   <translation>Dejo: %1, aquí: %2.</translation>
  </message>
 </context>
 <context>
  <name>LearnDialog</name>
  <message>
   <source>Save as a profile …</source>
   <translation>Guardar como perfil …</translation>
  </message>
  <message>
   <source>Learn a format</source>
   <translation>Aprender un formato</translation>
  </message>
  <message>
   <source>Lines of the tester: paste a few</source>
   <translation>Líneas del comprobador: pegar algunas</translation>
  </message>
  <message>
   <source>Choose a part of the first line, then press what it is</source>
   <translation>Elegir una parte de la primera línea y pulsar qué es</translation>
  </message>
  <message>
   <source>What every line becomes</source>
   <translation>En qué se convierte cada línea</translation>
  </message>
  <message>
   <source>Close</source>
   <translation>Cerrar</translation>
  </message>
  <message>
   <source>Lines of the tester</source>
   <translation>Líneas del comprobador</translation>
  </message>
  <message>
   <source>Pattern: %1</source>
   <translation>Patrón: %1</translation>
  </message>
  <message>
   <source>taken: </source>
   <translation>tomada: </translation>
  </message>
  <message>
   <source>NOT taken: </source>
   <translation>NO tomada: </translation>
  </message>
  <message>
   <source>Save as a profile</source>
   <translation>Guardar como perfil</translation>
  </message>
 </context>
 <context>
  <name>Legend</name>
  <message>
   <source>Verdicts and how many pins have each</source>
   <translation>Veredictos y cuántos pines tiene cada uno</translation>
  </message>
 </context>
 <context>
  <name>LookDialog</name>
  <message>
   <source>Light and text</source>
   <translation>Luz y texto</translation>
  </message>
  <message>
   <source>Light</source>
   <translation>Luz</translation>
  </message>
  <message>
   <source>Day</source>
   <translation>Día</translation>
  </message>
  <message>
   <source>Dusk</source>
   <translation>Crepúsculo</translation>
  </message>
  <message>
   <source>Night: red on black</source>
   <translation>Noche: rojo sobre negro</translation>
  </message>
  <message>
   <source>Size of text</source>
   <translation>Tamaño del texto</translation>
  </message>
  <message>
   <source>%1 %</source>
   <translation>%1 %</translation>
  </message>
  <message>
   <source>Close</source>
   <translation>Cerrar</translation>
  </message>
 </context>
 <context>
  <name>Navigation</name>
  <message>
   <source>Views</source>
   <translation>Vistas</translation>
  </message>
 </context>
 <context>
  <name>NewShowDialog</name>
  <message>
   <source>Back</source>
   <translation>Atrás</translation>
  </message>
  <message>
   <source>Open the new record</source>
   <translation>Abrir el registro nuevo</translation>
  </message>
  <message>
   <source>New show</source>
   <translation>Espectáculo nuevo</translation>
  </message>
  <message>
   <source>Cancel</source>
   <translation>Cancelar</translation>
  </message>
  <message>
   <source>The record</source>
   <translation>El registro</translation>
  </message>
  <message>
   <source>A new file, on this computer. Everything of the day is kept in it. The crew is enrolled once it is open.</source>
   <translation>Un archivo nuevo, en este ordenador. En él se guarda todo el día. El equipo se inscribe cuando esté abierto.</translation>
  </message>
  <message>
   <source>The record's file</source>
   <translation>Archivo del registro</translation>
  </message>
  <message>
   <source>Choose where …</source>
   <translation>Elegir dónde …</translation>
  </message>
  <message>
   <source>Step %1 of %2</source>
   <translation>Paso %1 de %2</translation>
  </message>
  <message>
   <source>What must be mended first:</source>
   <translation>Lo que hay que arreglar antes:</translation>
  </message>
  <message>
   <source>Worth a look:</source>
   <translation>Conviene mirar:</translation>
  </message>
  <message>
   <source>Next</source>
   <translation>Siguiente</translation>
  </message>
 </context>
 <context>
  <name>Paper</name>
  <message>
   <source>Given to the printer.</source>
   <translation>Entregado a la impresora.</translation>
  </message>
  <message>
   <source>The printer did not take it: look at it and at its queue.</source>
   <translation>La impresora no lo aceptó: mírela, y también su cola.</translation>
  </message>
 </context>
 <context>
  <name>PeoplePage</name>
  <message>
   <source>People and tags</source>
   <translation>Personas y fichas</translation>
  </message>
  <message>
   <source>Enrol a person …</source>
   <translation>Inscribir a una persona …</translation>
  </message>
  <message>
   <source>Where somebody goes</source>
   <translation>Adónde va alguien</translation>
  </message>
  <message>
   <source>anywhere in the field</source>
   <translation>cualquier parte del campo</translation>
  </message>
  <message>
   <source>Nobody is enrolled yet.</source>
   <translation>Aún no hay nadie inscrito.</translation>
  </message>
  <message>
   <source>IN THE FIELD</source>
   <translation>EN EL CAMPO</translation>
  </message>
  <message>
   <source>outside</source>
   <translation>fuera</translation>
  </message>
  <message>
   <source>tag out</source>
   <translation>ficha puesta</translation>
  </message>
  <message>
   <source>Comes out …</source>
   <translation>Sale …</translation>
  </message>
  <message>
   <source>%1 comes out of the field</source>
   <translation>%1 sale del campo</translation>
  </message>
  <message>
   <source>Told by another …</source>
   <translation>Lo dice otra persona …</translation>
  </message>
  <message>
   <source>Another person says that %1 is out</source>
   <translation>Otra persona dice que %1 está fuera</translation>
  </message>
  <message>
   <source>Goes in</source>
   <translation>Entra</translation>
  </message>
  <message>
   <source>%1 goes into the field</source>
   <translation>%1 entra en el campo</translation>
  </message>
  <message>
   <source>Tag back …</source>
   <translation>Ficha devuelta …</translation>
  </message>
  <message>
   <source>%1 takes the tag back</source>
   <translation>%1 retira su ficha</translation>
  </message>
  <message>
   <source>Tag, told by another …</source>
   <translation>Ficha, lo dice otra persona …</translation>
  </message>
  <message>
   <source>Hangs a tag</source>
   <translation>Pone una ficha</translation>
  </message>
  <message>
   <source>%1 hangs a tag</source>
   <translation>%1 pone una ficha</translation>
  </message>
  <message>
   <source>Out of the field</source>
   <translation>Fuera del campo</translation>
  </message>
  <message>
   <source>%1 is out of the field.</source>
   <translation>%1 está fuera del campo.</translation>
  </message>
  <message>
   <source>Reason</source>
   <translation>Motivo</translation>
  </message>
  <message>
   <source>Tag back</source>
   <translation>Ficha devuelta</translation>
  </message>
  <message>
   <source>The tag of %1 is back.</source>
   <translation>La ficha de %1 ha vuelto.</translation>
  </message>
  <message>
   <source>Where the next person goes in; the pins there count as unread from then on</source>
   <translation>Adónde entra la siguiente persona; los pines de allí cuentan desde entonces como no leídos</translation>
  </message>
 </context>
 <context>
  <name>PinPage</name>
  <message>
   <source>Current, by the planned loop at its worst</source>
   <translation>Corriente, según el lazo planeado en el peor caso</translation>
  </message>
  <message>
   <source>Current, by the measured loop</source>
   <translation>Corriente, según el lazo medido</translation>
  </message>
  <message>
   <source>Choose a pin: by pointer, or with the arrow keys. N goes to the next that does not fit.</source>
   <translation>Elegir un pin: con el puntero o con las flechas. N va al siguiente que no encaja.</translation>
  </message>
  <message>
   <source>free: nothing is planned here</source>
   <translation>libre: aquí no hay nada previsto</translation>
  </message>
  <message>
   <source>, %1 ohm</source>
   <translation>, %1 ohmios</translation>
  </message>
  <message numerus="yes">
   <source>%n igniter(s)</source>
   <translation>
    <numerusform>%n inflamador</numerusform>
    <numerusform>%n inflamadores</numerusform>
   </translation>
  </message>
  <message>
   <source>, in series</source>
   <translation>, en serie</translation>
  </message>
  <message>
   <source>, in parallel</source>
   <translation>, en paralelo</translation>
  </message>
  <message>
   <source>, lead %1 m</source>
   <translation>, cable %1 m</translation>
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
   <translation>O bien: %1 (%2 %)</translation>
  </message>
  <message>
   <source>Re-hooked</source>
   <translation>Reconectado</translation>
  </message>
  <message numerus="yes">
   <source>%n pin(s) read alike: a swap among them cannot be seen by the tester.</source>
   <translation>
    <numerusform>%n pin se lee igual: el comprobador no puede ver un cambio.</numerusform>
    <numerusform>%n pines se leen igual: el comprobador no puede ver un cambio entre ellos.</numerusform>
   </translation>
  </message>
  <message>
   <source>Show the pins that read alike</source>
   <translation>Mostrar los pines iguales</translation>
  </message>
  <message>
   <source>%1 ohm</source>
   <translation>%1 ohmios</translation>
  </message>
  <message>
   <source>above range</source>
   <translation>fuera de rango</translation>
  </message>
  <message>
   <source> (before the re-hook)</source>
   <translation> (antes de reconectar)</translation>
  </message>
  <message>
   <source>History, the newest first</source>
   <translation>Historial, lo más reciente primero</translation>
  </message>
  <message>
   <source>and %1 more: see the record</source>
   <translation>y %1 más: véase el registro</translation>
  </message>
 </context>
 <context>
  <name>QrCode</name>
  <message>
   <source>QR code of the mark %1</source>
   <translation>Código QR de la marca %1</translation>
  </message>
 </context>
 <context>
  <name>RecordView</name>
  <message>
   <source>Readings too</source>
   <translation>También lecturas</translation>
  </message>
  <message>
   <source>Verify now</source>
   <translation>Verificar ahora</translation>
  </message>
  <message>
   <source>Find in the entries</source>
   <translation>Buscar en las entradas</translation>
  </message>
  <message>
   <source>Entries of the record</source>
   <translation>Entradas del registro</translation>
  </message>
  <message>
   <source>Mark of the record now: write it on the permit</source>
   <translation>Marca del registro ahora: escribirla en el permiso</translation>
  </message>
  <message>
   <source>The entry, as it stands on disk</source>
   <translation>La entrada, tal como está en disco</translation>
  </message>
  <message>
   <source>Not verified since it was opened.</source>
   <translation>Sin verificar desde que se abrió.</translation>
  </message>
  <message>
   <source>Reading the whole record …</source>
   <translation>Leyendo todo el registro …</translation>
  </message>
  <message>
   <source>At %1 all %2 entries held; the mark was %3.</source>
   <translation>A las %1 las %2 entradas se mantenían; la marca era %3.</translation>
  </message>
  <message>
   <source>DOES NOT HOLD, line %1: %2</source>
   <translation>NO SE MANTIENE, línea %1: %2</translation>
  </message>
 </context>
 <context>
  <name>ReleasePage</name>
  <message>
   <source>Release</source>
   <translation>Autorización</translation>
  </message>
  <message>
   <source>Show time, by the clock of this place</source>
   <translation>Hora del espectáculo, según el reloj del lugar</translation>
  </message>
  <message>
   <source>Show time</source>
   <translation>Hora del espectáculo</translation>
  </message>
  <message>
   <source>Set the show time …</source>
   <translation>Fijar la hora …</translation>
  </message>
  <message>
   <source>Set the show time</source>
   <translation>Fijar la hora del espectáculo</translation>
  </message>
  <message>
   <source>The show begins at %1.</source>
   <translation>El espectáculo empieza a las %1.</translation>
  </message>
  <message>
   <source>Lift the hold …</source>
   <translation>Levantar el alto …</translation>
  </message>
  <message>
   <source>Withdraw the release: anyone, at once</source>
   <translation>Retirar la autorización: cualquiera, al momento</translation>
  </message>
  <message>
   <source>The last release fell: %1</source>
   <translation>La última autorización cayó: %1</translation>
  </message>
  <message>
   <source>Sign the release …</source>
   <translation>Firmar la autorización …</translation>
  </message>
  <message>
   <source>Waiting for a second signature</source>
   <translation>Espera una segunda firma</translation>
  </message>
  <message>
   <source>%1, by %2</source>
   <translation>%1, de %2</translation>
  </message>
  <message>
   <source>Second signature to entry %1 …</source>
   <translation>Segunda firma de la entrada %1 …</translation>
  </message>
  <message>
   <source>Second signature</source>
   <translation>Segunda firma</translation>
  </message>
  <message>
   <source>Sign the release</source>
   <translation>Firmar la autorización</translation>
  </message>
  <message>
   <source>Every item holds at this moment, the field is clear, and the release falls by itself when anything under it falls.</source>
   <translation>Todos los puntos se mantienen en este momento, el campo está vacío y la autorización cae sola si cae algo de lo que la sostiene.</translation>
  </message>
  <message>
   <source>Lift the hold</source>
   <translation>Levantar el alto</translation>
  </message>
  <message>
   <source>What the hold broke is to be answered anew.</source>
   <translation>Lo que el alto rompió debe responderse de nuevo.</translation>
  </message>
  <message>
   <source>Reason</source>
   <translation>Motivo</translation>
  </message>
  <message>
   <source>Timeline</source>
   <translation>Cronología</translation>
  </message>
 </context>
 <context>
  <name>ReportView</name>
  <message>
   <source>The report is made from the record alone, which is verified on the way.</source>
   <translation>El informe se hace solo del registro, que se verifica al leerlo.</translation>
  </message>
  <message>
   <source>Make the report</source>
   <translation>Hacer el informe</translation>
  </message>
  <message>
   <source>Save as PDF …</source>
   <translation>Guardar como PDF …</translation>
  </message>
  <message>
   <source>Save as HTML …</source>
   <translation>Guardar como HTML …</translation>
  </message>
  <message>
   <source>Print …</source>
   <translation>Imprimir …</translation>
  </message>
  <message>
   <source>The report</source>
   <translation>El informe</translation>
  </message>
  <message>
   <source>Reading the whole record …</source>
   <translation>Leyendo todo el registro …</translation>
  </message>
  <message>
   <source>Save as PDF</source>
   <translation>Guardar como PDF</translation>
  </message>
  <message>
   <source>Saved: %1</source>
   <translation>Guardado: %1</translation>
  </message>
  <message>
   <source>Save as HTML</source>
   <translation>Guardar como HTML</translation>
  </message>
  <message>
   <source>As it stood at %1; printed it is black on white.</source>
   <translation>Estado a las %1; impreso es negro sobre blanco.</translation>
  </message>
 </context>
 <context>
  <name>SampleLine</name>
  <message>
   <source>Sample line: choose a part of it</source>
   <translation>Línea de muestra: elegir una parte</translation>
  </message>
  <message>
   <source>The chosen part is: %1</source>
   <translation>La parte elegida es: %1</translation>
  </message>
  <message>
   <source>Begin anew</source>
   <translation>Empezar de nuevo</translation>
  </message>
  <message>
   <source>Nothing is marked yet.</source>
   <translation>Aún no hay nada marcado.</translation>
  </message>
  <message>
   <source>Module</source>
   <translation>Módulo</translation>
  </message>
  <message>
   <source>Rail</source>
   <translation>Carril</translation>
  </message>
  <message>
   <source>Pin</source>
   <translation>Pin</translation>
  </message>
  <message>
   <source>Value</source>
   <translation>Valor</translation>
  </message>
  <message>
   <source>Unit</source>
   <translation>Unidad</translation>
  </message>
  <message>
   <source>Line number</source>
   <translation>Número de línea</translation>
  </message>
 </context>
 <context>
  <name>Session</name>
  <message>
   <source>Written as entry %1.</source>
   <translation>Escrito como entrada %1.</translation>
  </message>
 </context>
 <context>
  <name>Sheet</name>
  <message>
   <source>From %1, about %2 m in straight lines.</source>
   <translation>Desde %1, unos %2 m en línea recta.</translation>
  </message>
  <message>
   <source>Walk sheet</source>
   <translation>Hoja de recorrido</translation>
  </message>
  <message>
   <source>Made %1, record %2. Clear the danger area before a reading.</source>
   <translation>Hecha %1, registro %2. Despejar la zona de peligro antes de una lectura.</translation>
  </message>
 </context>
 <context>
  <name>SignDialog</name>
  <message>
   <source>Sign</source>
   <translation>Firmar</translation>
  </message>
  <message>
   <source>Who signs</source>
   <translation>Quién firma</translation>
  </message>
  <message>
   <source>Passphrase of that person's key</source>
   <translation>Frase de paso de la clave de esa persona</translation>
  </message>
  <message>
   <source>Cancel</source>
   <translation>Cancelar</translation>
  </message>
  <message>
   <source>Passphrase</source>
   <translation>Frase de paso</translation>
  </message>
  <message>
   <source>Nobody who may sign this is enrolled with a key on this computer.</source>
   <translation>Nadie que pueda firmar esto está inscrito con una clave en este ordenador.</translation>
  </message>
  <message>
   <source>A reason is needed.</source>
   <translation>Hace falta un motivo.</translation>
  </message>
  <message>
   <source>Opening the key …</source>
   <translation>Abriendo la clave …</translation>
  </message>
  <message>
   <source>Signed and written as entry %1.</source>
   <translation>Firmado y escrito como entrada %1.</translation>
  </message>
 </context>
 <context>
  <name>StandingLine</name>
  <message>
   <source>NOT WRITTEN: %1</source>
   <translation>NO ESCRITO: %1</translation>
  </message>
  <message>
   <source>The release fell: %1</source>
   <translation>La autorización cayó: %1</translation>
  </message>
  <message>
   <source>No release yet: %1</source>
   <translation>Aún sin autorización: %1</translation>
  </message>
  <message>
   <source>What stands</source>
   <translation>Lo que está pendiente</translation>
  </message>
 </context>
 <context>
  <name>StartPage</name>
  <message>
   <source>Reads and records the show day. It never fires, arms or transmits.</source>
   <translation>Lee y registra el día del espectáculo. Nunca dispara, arma ni transmite.</translation>
  </message>
  <message>
   <source>Open a record …</source>
   <translation>Abrir un registro …</translation>
  </message>
  <message>
   <source>New show …</source>
   <translation>Espectáculo nuevo …</translation>
  </message>
  <message>
   <source>Go on with the last record</source>
   <translation>Seguir con el último registro</translation>
  </message>
 </context>
 <context>
  <name>Strip</name>
  <message>
   <source>Call a hold</source>
   <translation>Pedir un alto</translation>
  </message>
  <message>
   <source>Call a hold: anyone, at once</source>
   <translation>Pedir un alto: cualquiera, al momento</translation>
  </message>
  <message>
   <source>Time to show</source>
   <translation>Hasta el espectáculo</translation>
  </message>
  <message>
   <source>The day</source>
   <translation>El día</translation>
  </message>
  <message>
   <source>Release</source>
   <translation>Autorización</translation>
  </message>
  <message>
   <source>Arming key</source>
   <translation>Llave de armado</translation>
  </message>
  <message>
   <source>In the field</source>
   <translation>En el campo</translation>
  </message>
  <message>
   <source>Wind</source>
   <translation>Viento</translation>
  </message>
  <message>
   <source>Tester</source>
   <translation>Comprobador</translation>
  </message>
  <message>
   <source>Last written</source>
   <translation>Último escrito</translation>
  </message>
  <message>
   <source>not set</source>
   <translation>sin fijar</translation>
  </message>
  <message>
   <source>show at %1</source>
   <translation>espectáculo a las %1</translation>
  </message>
  <message>
   <source>%1 past</source>
   <translation>hace %1</translation>
  </message>
  <message>
   <source>hold by %1: %2</source>
   <translation>alto de %1: %2</translation>
  </message>
  <message>
   <source>stands until something breaks it</source>
   <translation>vale hasta que algo la rompa</translation>
  </message>
  <message>
   <source>stands until %1 (%2)</source>
   <translation>vale hasta las %1 (%2)</translation>
  </message>
  <message>
   <source>signed by %1 and %2</source>
   <translation>firmada por %1 y %2</translation>
  </message>
  <message>
   <source>waits for the second signature</source>
   <translation>espera la segunda firma</translation>
  </message>
  <message numerus="yes">
   <source>not possible: %n reason(s)</source>
   <translation>
    <numerusform>no es posible: %n motivo</numerusform>
    <numerusform>no es posible: %n motivos</numerusform>
   </translation>
  </message>
  <message>
   <source>possible</source>
   <translation>posible</translation>
  </message>
  <message>
   <source>possible, would stand until %1 (%2)</source>
   <translation>posible, valdría hasta las %1 (%2)</translation>
  </message>
  <message>
   <source>offered to %1</source>
   <translation>ofrecida a %1</translation>
  </message>
  <message>
   <source>no key in the checklist</source>
   <translation>sin llave en la lista</translation>
  </message>
  <message>
   <source>nobody</source>
   <translation>nadie</translation>
  </message>
  <message>
   <source>%1, gust %2 m/s</source>
   <translation>%1, racha %2 m/s</translation>
  </message>
  <message>
   <source>not measured</source>
   <translation>sin medir</translation>
  </message>
  <message>
   <source>by %1</source>
   <translation>de %1</translation>
  </message>
  <message>
   <source>no port chosen</source>
   <translation>sin puerto elegido</translation>
  </message>
  <message>
   <source>quiet</source>
   <translation>en silencio</translation>
  </message>
  <message>
   <source>reading</source>
   <translation>leyendo</translation>
  </message>
  <message>
   <source>unplugged</source>
   <translation>desenchufado</translation>
  </message>
  <message>
   <source>not open</source>
   <translation>sin abrir</translation>
  </message>
  <message>
   <source>NOT WRITTEN</source>
   <translation>NO ESCRITO</translation>
  </message>
  <message>
   <source>Views</source>
   <translation>Vistas</translation>
  </message>
  <message>
   <source>Show in</source>
   <translation>Faltan</translation>
  </message>
  <message>
   <source>Day</source>
   <translation>Día</translation>
  </message>
  <message>
   <source>Key</source>
   <translation>Llave</translation>
  </message>
  <message>
   <source>Field</source>
   <translation>Campo</translation>
  </message>
  <message>
   <source>Last</source>
   <translation>Último</translation>
  </message>
  <message>
   <source>%1, too short</source>
   <translation>%1, muy justo</translation>
  </message>
  <message numerus="yes">
   <source>%n inside</source>
   <translation>
    <numerusform>%n dentro</numerusform>
    <numerusform>%n dentro</numerusform>
   </translation>
  </message>
  <message>
   <source>somebody</source>
   <translation>alguien</translation>
  </message>
  <message>
   <source>hold by %1, no reason given</source>
   <translation>alto de %1, sin motivo dado</translation>
  </message>
 </context>
 <context>
  <name>TesterView</name>
  <message>
   <source>Lines as they came and what each became; all are on disk</source>
   <translation>Líneas tal como llegaron y en qué se convirtió cada una; todas están en disco</translation>
  </message>
  <message>
   <source>Lines of the tester</source>
   <translation>Líneas del comprobador</translation>
  </message>
  <message>
   <source>Port: found by name, none is opened before you press Listen</source>
   <translation>Puerto: hallado por su nombre; no se abre ninguno antes de pulsar Escuchar</translation>
  </message>
  <message>
   <source>Port</source>
   <translation>Puerto</translation>
  </message>
  <message>
   <source>Listen</source>
   <translation>Escuchar</translation>
  </message>
  <message>
   <source>Stop</source>
   <translation>Parar</translation>
  </message>
  <message>
   <source>Look for ports</source>
   <translation>Buscar puertos</translation>
  </message>
  <message>
   <source>Learn a format …</source>
   <translation>Aprender un formato …</translation>
  </message>
  <message>
   <source> above range</source>
   <translation> fuera de rango</translation>
  </message>
  <message>
   <source> %1 ohm</source>
   <translation> %1 ohmios</translation>
  </message>
  <message>
   <source>not taken: %1</source>
   <translation>no tomada: %1</translation>
  </message>
 </context>
 <context>
  <name>Timeline</name>
  <message>
   <source>holds until something breaks it</source>
   <translation>se mantiene hasta que algo lo rompa</translation>
  </message>
  <message>
   <source>holds until %1 (%2)</source>
   <translation>se mantiene hasta las %1 (%2)</translation>
  </message>
  <message>
   <source>late: should have begun by %1</source>
   <translation>tarde: debía empezar a las %1</translation>
  </message>
  <message>
   <source>begin by %1 (%2 left)</source>
   <translation>empezar antes de las %1 (quedan %2)</translation>
  </message>
  <message>
   <source>ends first: %1</source>
   <translation>termina primero: %1</translation>
  </message>
 </context>
 <context>
  <name>TimelineView</name>
  <message>
   <source>Timeline of the release</source>
   <translation>Cronología de la autorización</translation>
  </message>
  <message>
   <source>No show time is set, so nothing can be planned backwards from it.</source>
   <translation>No hay hora fijada, así que nada puede planearse hacia atrás.</translation>
  </message>
  <message>
   <source>show %1</source>
   <translation>espectáculo %1</translation>
  </message>
  <message>
   <source>end %1</source>
   <translation>fin %1</translation>
  </message>
  <message>
   <source>now %1</source>
   <translation>ahora %1</translation>
  </message>
 </context>
 <context>
  <name>TwoPane</name>
  <message>
   <source>Back to the list</source>
   <translation>Volver a la lista</translation>
  </message>
 </context>
 <context>
  <name>Views</name>
  <message>
   <source>Checklist</source>
   <translation>Lista</translation>
  </message>
  <message>
   <source>Crew</source>
   <translation>Equipo</translation>
  </message>
  <message>
   <source>Field</source>
   <translation>Campo</translation>
  </message>
  <message>
   <source>Faults</source>
   <translation>Fallos</translation>
  </message>
  <message>
   <source>Tester</source>
   <translation>Comprobador</translation>
  </message>
  <message>
   <source>Weather</source>
   <translation>Tiempo</translation>
  </message>
  <message>
   <source>Record</source>
   <translation>Registro</translation>
  </message>
  <message>
   <source>Report</source>
   <translation>Informe</translation>
  </message>
 </context>
 <context>
  <name>WalkPanel</name>
  <message>
   <source>Now probe</source>
   <translation>Medir ahora</translation>
  </message>
  <message>
   <source>Back one pin</source>
   <translation>Un pin atrás</translation>
  </message>
  <message>
   <source>Skip: leave it unread</source>
   <translation>Saltar: dejarlo sin leer</translation>
  </message>
  <message>
   <source>The probe is on it and it reads open</source>
   <translation>La punta está puesta y lee abierto</translation>
  </message>
  <message>
   <source>All pins are walked</source>
   <translation>Todos los pines recorridos</translation>
  </message>
  <message>
   <source>Lift the probe first. %1 of %2</source>
   <translation>Levantar antes la punta. %1 de %2</translation>
  </message>
  <message>
   <source>%1 of %2; the value is taken when it is steady</source>
   <translation>%1 de %2; el valor se toma cuando está estable</translation>
  </message>
 </context>
 <context>
  <name>WeatherView</name>
  <message>
   <source>Wind</source>
   <translation>Viento</translation>
  </message>
  <message>
   <source>Solid line and discs: mean. Broken line and crosses: gust.</source>
   <translation>Línea continua y discos: media. Línea discontinua y cruces: racha.</translation>
  </message>
  <message>
   <source>Enter wind read by hand …</source>
   <translation>Anotar el viento medido a mano …</translation>
  </message>
  <message>
   <source>Thunder</source>
   <translation>Trueno</translation>
  </message>
  <message>
   <source>Seconds from flash to thunder; empty where nobody counted</source>
   <translation>Segundos del relámpago al trueno; vacío si nadie contó</translation>
  </message>
  <message>
   <source>Seconds from flash to thunder</source>
   <translation>Segundos del relámpago al trueno</translation>
  </message>
  <message>
   <source>Thunder was heard now</source>
   <translation>Se acaba de oír un trueno</translation>
  </message>
  <message>
   <source>'%1' is not a number of seconds.</source>
   <translation>«%1» no es un número de segundos.</translation>
  </message>
  <message>
   <source>The checklist does not ask for it.</source>
   <translation>La lista no lo pide.</translation>
  </message>
  <message>
   <source>No thunder is in the record.</source>
   <translation>No hay truenos en el registro.</translation>
  </message>
  <message>
   <source>%1: thunder</source>
   <translation>%1: trueno</translation>
  </message>
  <message>
   <source>%1: thunder, %2 s after its flash</source>
   <translation>%1: trueno, %2 s tras el relámpago</translation>
  </message>
 </context>
 <context>
  <name>WindPlot</name>
  <message>
   <source>Wind and gust over the last two hours</source>
   <translation>Viento y racha de las dos últimas horas</translation>
  </message>
  <message>
   <source>now %1</source>
   <translation>ahora %1</translation>
  </message>
  <message>
   <source>m/s</source>
   <translation>m/s</translation>
  </message>
  <message>
   <source>limit of the mean</source>
   <translation>límite de la media</translation>
  </message>
  <message>
   <source>limit of the gust</source>
   <translation>límite de la racha</translation>
  </message>
  <message>
   <source>No wind is in the record for the last two hours.</source>
   <translation>No hay viento en el registro de las dos últimas horas.</translation>
  </message>
 </context>
 <context>
  <name>Window</name>
  <message>
   <source>Making the demonstration …</source>
   <translation>Se prepara la demostración …</translation>
  </message>
  <message>
   <source>%1 – walkdown</source>
   <translation>%1 – walkdown</translation>
  </message>
  <message>
   <source>Open a record</source>
   <translation>Abrir un registro</translation>
  </message>
  <message>
   <source>Reading the record …</source>
   <translation>Leyendo el registro …</translation>
  </message>
  <message>
   <source>Demo: sweep</source>
   <translation>Demo: barrido</translation>
  </message>
  <message>
   <source>The simulated tester reads every pin</source>
   <translation>El comprobador simulado lee todos los pines</translation>
  </message>
  <message>
   <source>A demonstration: show, people and faults are invented. Everybody's passphrase is: %1</source>
   <translation>Una demostración: espectáculo, personas y fallos son inventados. La frase de paso de todos es: %1</translation>
  </message>
  <message>
   <source>Light and size of text</source>
   <translation>Luz y tamaño del texto</translation>
  </message>
  <message>
   <source>Light and text</source>
   <translation>Luz y texto</translation>
  </message>
  <message>
   <source>A demonstration: everybody's passphrase is: %1</source>
   <translation>Una demostración: la frase de paso de todos es: %1</translation>
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
   <translation>La tabla de cableado, en CSV: una fila por pin.</translation>
  </message>
  <message>
   <source>Modules</source>
   <translation>Módulos</translation>
  </message>
  <message>
   <source>How many pins each rail has; may stay empty: a rail is then as long as its last planned pin.</source>
   <translation>Cuántos pines tiene cada carril; puede quedar vacío: un carril llega entonces hasta su último pin previsto.</translation>
  </message>
  <message>
   <source>Site</source>
   <translation>Lugar</translation>
  </message>
  <message>
   <source>Positions and boundaries on the ground, as GeoJSON; may stay empty.</source>
   <translation>Posiciones y límites sobre el terreno, en GeoJSON; puede quedar vacío.</translation>
  </message>
  <message>
   <source>Distances</source>
   <translation>Distancias</translation>
  </message>
  <message>
   <source>The table of distances that holds here. The one that comes with the program is an example: yours replaces it.</source>
   <translation>La tabla de distancias que rige aquí. La del programa es un ejemplo: la suya la sustituye.</translation>
  </message>
  <message>
   <source>Igniters</source>
   <translation>Inflamadores</translation>
  </message>
  <message>
   <source>Resistances and currents. The generic file has no currents: they come from the maker's sheet.</source>
   <translation>Resistencias y corrientes. El archivo genérico no tiene corrientes: vienen de la hoja del fabricante.</translation>
  </message>
  <message>
   <source>Tester</source>
   <translation>Comprobador</translation>
  </message>
  <message>
   <source>How the tester's port is set and its lines look.</source>
   <translation>Cómo se ajusta el puerto del comprobador y cómo son sus líneas.</translation>
  </message>
  <message>
   <source>Checklist</source>
   <translation>Lista</translation>
  </message>
  <message>
   <source>The stages and items of the day.</source>
   <translation>Las etapas y los puntos del día.</translation>
  </message>
 </context>
 <context>
  <name>words</name>
  <message>
   <source>fits</source>
   <translation>encaja</translation>
  </message>
  <message>
   <source>doubtful</source>
   <translation>dudoso</translation>
  </message>
  <message>
   <source>low</source>
   <translation>bajo</translation>
  </message>
  <message>
   <source>high</source>
   <translation>alto</translation>
  </message>
  <message>
   <source>open</source>
   <translation>abierto</translation>
  </message>
  <message>
   <source>short</source>
   <translation>en corto</translation>
  </message>
  <message>
   <source>unsteady</source>
   <translation>inestable</translation>
  </message>
  <message>
   <source>stray</source>
   <translation>extraño</translation>
  </message>
  <message>
   <source>unread</source>
   <translation>sin leer</translation>
  </message>
  <message>
   <source>stale</source>
   <translation>caduco</translation>
  </message>
  <message>
   <source>igniter missing</source>
   <translation>falta un inflamador</translation>
  </message>
  <message>
   <source>one igniter too many</source>
   <translation>sobra un inflamador</translation>
  </message>
  <message>
   <source>poor joint</source>
   <translation>mala unión</translation>
  </message>
  <message>
   <source>leak</source>
   <translation>fuga</translation>
  </message>
  <message>
   <source>intermittent</source>
   <translation>intermitente</translation>
  </message>
  <message>
   <source>stray load</source>
   <translation>carga extraña</translation>
  </message>
  <message>
   <source>wrong lead</source>
   <translation>cable equivocado</translation>
  </message>
  <message>
   <source>wrong igniter</source>
   <translation>inflamador equivocado</translation>
  </message>
  <message>
   <source>unknown</source>
   <translation>desconocido</translation>
  </message>
  <message>
   <source>swapped</source>
   <translation>intercambiados</translation>
  </message>
  <message>
   <source>shifted</source>
   <translation>desplazado</translation>
  </message>
  <message>
   <source>rail turned round</source>
   <translation>carril al revés</translation>
  </message>
  <message>
   <source>rails exchanged</source>
   <translation>carriles cambiados</translation>
  </message>
  <message>
   <source>modules exchanged</source>
   <translation>módulos cambiados</translation>
  </message>
  <message>
   <source>tester not zeroed</source>
   <translation>comprobador sin poner a cero</translation>
  </message>
  <message>
   <source>wire differs</source>
   <translation>hilo distinto</translation>
  </message>
  <message>
   <source>to do</source>
   <translation>por hacer</translation>
  </message>
  <message>
   <source>due</source>
   <translation>pendiente</translation>
  </message>
  <message>
   <source>holds</source>
   <translation>se mantiene</translation>
  </message>
  <message>
   <source>expired</source>
   <translation>vencido</translation>
  </message>
  <message>
   <source>broken</source>
   <translation>roto</translation>
  </message>
  <message>
   <source>refused</source>
   <translation>rechazado</translation>
  </message>
  <message>
   <source>waived</source>
   <translation>eximido</translation>
  </message>
  <message>
   <source>hold</source>
   <translation>alto</translation>
  </message>
  <message>
   <source>released</source>
   <translation>autorizado</translation>
  </message>
  <message>
   <source>ready</source>
   <translation>listo</translation>
  </message>
  <message>
   <source>after</source>
   <translation>después</translation>
  </message>
  <message>
   <source>checking</source>
   <translation>comprobando</translation>
  </message>
 </context>
</TS>
