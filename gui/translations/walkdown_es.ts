<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<TS version="2.1" language="es">
 <context>
  <name>Against</name>
  <message>
   <source>“%1”</source>
   <translation>«%1»</translation>
  </message>
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
  <name>AskFile</name>
  <message>
   <source>Up</source>
   <translation>Subir</translation>
  </message>
  <message>
   <source>New folder</source>
   <translation>Carpeta nueva</translation>
  </message>
  <message>
   <source>Look in:</source>
   <translation>Buscar en:</translation>
  </message>
  <message>
   <source>File name:</source>
   <translation>Nombre de archivo:</translation>
  </message>
  <message>
   <source>Files of type:</source>
   <translation>Tipo de archivo:</translation>
  </message>
  <message>
   <source>Cancel</source>
   <translation>Cancelar</translation>
  </message>
  <message>
   <source>Save</source>
   <translation>Guardar</translation>
  </message>
  <message>
   <source>Open</source>
   <translation>Abrir</translation>
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
  <name>FaultReadings</name>
  <message>
   <source>nothing planned</source>
   <translation>nada previsto</translation>
  </message>
  <message>
   <source>planned %1 to %2 ohm</source>
   <translation>previsto de %1 a %2 ohmios</translation>
  </message>
  <message>
   <source>%1, %2 ohm</source>
   <translation>%1, %2 ohmios</translation>
  </message>
  <message numerus="yes">
   <source>and %n more</source>
   <translation>
    <numerusform>y %n más</numerusform>
    <numerusform>y %n más</numerusform>
   </translation>
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
  <name>Sentences</name>
  <message>
   <source>the line is not as a record writes it: a checkpoint holds one text and nothing else</source>
   <translation>la línea no es como la escribe un registro: un punto de control contiene un texto y nada más</translation>
  </message>
  <message>
   <source>the line is not as a record writes it: no entry number</source>
   <translation>la línea no es como la escribe un registro: sin número de entrada</translation>
  </message>
  <message>
   <source>the line is not as a record writes it: no time</source>
   <translation>la línea no es como la escribe un registro: sin hora</translation>
  </message>
  <message>
   <source>the line is not as a record writes it: the time is not one, in UTC with three decimals</source>
   <translation>la línea no es como la escribe un registro: la hora no lo es, en UTC con tres decimales</translation>
  </message>
  <message>
   <source>the line is not as a record writes it: no boot clock</source>
   <translation>la línea no es como la escribe un registro: sin reloj desde el arranque</translation>
  </message>
  <message>
   <source>the line is not as a record writes it: no kind</source>
   <translation>la línea no es como la escribe un registro: sin tipo</translation>
  </message>
  <message>
   <source>the line is not as a record writes it: no body</source>
   <translation>la línea no es como la escribe un registro: sin contenido</translation>
  </message>
  <message>
   <source>the line is not as a record writes it: the body has another spelling at byte %1</source>
   <translation>la línea no es como la escribe un registro: el contenido está escrito de otro modo en el byte %1</translation>
  </message>
  <message>
   <source>the line is longer than a record allows</source>
   <translation>la línea es más larga de lo que permite un registro</translation>
  </message>
  <message>
   <source>entry %1 should stand here, and it is entry %2</source>
   <translation>aquí debería estar la entrada %1, y es la entrada %2</translation>
  </message>
  <message>
   <source>no checkpoint comes for too long</source>
   <translation>pasa demasiado sin que llegue un punto de control</translation>
  </message>
  <message>
   <source>a checkpoint stands here with no entry before it</source>
   <translation>aquí hay un punto de control sin ninguna entrada antes</translation>
  </message>
  <message>
   <source>a checkpoint has one signature</source>
   <translation>un punto de control tiene una firma</translation>
  </message>
  <message>
   <source>the checkpoint is not signed by a station of this record</source>
   <translation>el punto de control no está firmado por ninguna estación de este registro</translation>
  </message>
  <message>
   <source>the checkpoint seals %1 entries, and %2 stand before it</source>
   <translation>el punto de control sella %1 entradas, y hay %2 antes</translation>
  </message>
  <message>
   <source>line %1 was changed after it was sealed</source>
   <translation>la línea %1 se modificó después de sellarse</translation>
  </message>
  <message>
   <source>one of the lines %1 to %2 was changed after it was sealed</source>
   <translation>una de las líneas %1 a %2 se modificó después de sellarse</translation>
  </message>
  <message>
   <source>line %1</source>
   <translation>línea %1</translation>
  </message>
  <message>
   <source>one of the lines %1 to %2</source>
   <translation>una de las líneas %1 a %2</translation>
  </message>
  <message>
   <source>the checkpoint is of another record: %1</source>
   <translation>el punto de control es de otro registro: %1</translation>
  </message>
  <message>
   <source>the file ends in the middle of this line: its end was cut, or never written</source>
   <translation>el archivo termina en medio de esta línea: se cortó el final, o nunca se escribió</translation>
  </message>
  <message>
   <source>no checkpoint follows %1: the end was cut, or never acknowledged</source>
   <translation>no sigue ningún punto de control, tras: %1. Se cortó el final, o nunca se confirmó</translation>
  </message>
  <message>
   <source>the file is empty</source>
   <translation>el archivo está vacío</translation>
  </message>
  <message>
   <source>the opening does not hold: %1</source>
   <translation>la apertura no se mantiene: %1</translation>
  </message>
  <message>
   <source>the record was closed, and this entry comes after it</source>
   <translation>el registro se cerró, y esta entrada viene después</translation>
  </message>
  <message>
   <source>the sign-off belongs to another record</source>
   <translation>la firma es de otro registro</translation>
  </message>
  <message>
   <source>the sign-off names a state that this record was not in shortly before</source>
   <translation>la firma nombra un estado que este registro no tenía poco antes</translation>
  </message>
  <message>
   <source>the sign-off is too old for this entry</source>
   <translation>la firma es demasiado antigua para esta entrada</translation>
  </message>
  <message>
   <source>the sign-off is of another time than its entry</source>
   <translation>la firma es de otro momento que su entrada</translation>
  </message>
  <message>
   <source>the sign-off was used before</source>
   <translation>la firma ya se usó</translation>
  </message>
  <message>
   <source>the cosignature is for another record</source>
   <translation>la cofirma es para otro registro</translation>
  </message>
  <message>
   <source>the cosignature is by nobody who is enrolled as witness</source>
   <translation>la cofirma no es de nadie inscrito como testigo</translation>
  </message>
  <message>
   <source>the cosigned state is not one that this record was in</source>
   <translation>el estado cofirmado no lo tuvo este registro</translation>
  </message>
  <message>
   <source>the entry %1 does not hold: %2</source>
   <translation>la entrada %1 no se mantiene: %2</translation>
  </message>
  <message>
   <source>it has to be signed, and is not</source>
   <translation>tiene que estar firmada, y no lo está</translation>
  </message>
  <message>
   <source>the entry %1 does not hold: %2 signed something else than the entry says</source>
   <translation>la entrada %1 no se mantiene: %2 firmó otra cosa que lo que dice la entrada</translation>
  </message>
  <message>
   <source>it is signed by %1 as %2, and says %3 as %4</source>
   <translation>está firmada por %1 como %2, y dice %3 como %4</translation>
  </message>
  <message>
   <source>the release was signed and not possible at that moment; %1</source>
   <translation>la autorización se firmó y no era posible en ese momento; %1</translation>
  </message>
  <message>
   <source>this is no checkpoint</source>
   <translation>esto no es un punto de control</translation>
  </message>
  <message>
   <source>pin %1 of rail %2, module %3</source>
   <translation>el pin %1 del carril %2, módulo %3</translation>
  </message>
  <message>
   <source>Check the plug, the lead and the igniter on %1: the circuit is open; mend it, then read it again</source>
   <translation>Revise el conector, el cable y el inflamador en %1: el circuito está abierto; repárelo y léalo otra vez</translation>
  </message>
  <message>
   <source>Take the shunt off the lead on %1, or find where its two conductors touch; then read it again</source>
   <translation>Quite el puente del cable en %1, o busque dónde se tocan sus dos conductores; luego léalo otra vez</translation>
  </message>
  <message>
   <source>Count the igniters on %1: one fewer is connected than planned; add it, then read it again</source>
   <translation>Cuente los inflamadores en %1: hay uno menos de lo previsto; añádalo y léalo otra vez</translation>
  </message>
  <message>
   <source>Count the igniters on %1: one more is connected than planned; take it off, then read it again</source>
   <translation>Cuente los inflamadores en %1: hay uno más de lo previsto; quítelo y léalo otra vez</translation>
  </message>
  <message>
   <source>Make the splices and the plug on %1 anew: a joint adds resistance; then read it again</source>
   <translation>Rehaga las uniones y el conector en %1: una unión añade resistencia; luego léalo otra vez</translation>
  </message>
  <message>
   <source>Dry and insulate the splices on %1: current leaks past the igniter; then read it again</source>
   <translation>Seque y aísle las uniones en %1: hay corriente que no pasa por el inflamador; luego léalo otra vez</translation>
  </message>
  <message>
   <source>Re-seat the plug and tug each splice on %1: its readings jump; then read it several times</source>
   <translation>Vuelva a enchufar el conector y tire de cada unión en %1: sus lecturas saltan; luego léalo varias veces</translation>
  </message>
  <message>
   <source>See whose lead is on %1: nothing is planned there; move it to its own pin, then read both again</source>
   <translation>Mire de quién es el cable en %1: ahí no hay nada previsto; páselo a su propio pin y lea los dos otra vez</translation>
  </message>
  <message>
   <source>Compare length and gauge of the lead on %1 with the plan; change the one that is wrong, then read it again</source>
   <translation>Compare la longitud y la sección del cable en %1 con el plan; cambie lo que esté mal y léalo otra vez</translation>
  </message>
  <message>
   <source>Compare the type of igniter on %1 with the plan; change it, then read it again</source>
   <translation>Compare el tipo de inflamador en %1 con el plan; cámbielo y léalo otra vez</translation>
  </message>
  <message>
   <source>Read %1 again: its readings cannot be believed or explained; if they stay, trace its circuit by eye</source>
   <translation>Lea %1 otra vez: sus lecturas no se pueden creer ni explicar; si siguen igual, recorra su circuito con la vista</translation>
  </message>
  <message>
   <source>Exchange the leads on %1 and %2; then read both again</source>
   <translation>Intercambie los cables en %1 y %2; luego lea los dos otra vez</translation>
  </message>
  <message>
   <source>On module %1, rail %2, the leads planned for pins %3 to %4 sit %5 pin too high: move each back to its own pin, then read the rail again</source>
   <translation>En el módulo %1, carril %2, los cables previstos para los pines %3 a %4 están %5 pin de más: devuelva cada uno a su pin y lea el carril otra vez</translation>
  </message>
  <message>
   <source>On module %1, rail %2, the leads planned for pins %3 to %4 sit %5 pins too high: move each back to its own pin, then read the rail again</source>
   <translation>En el módulo %1, carril %2, los cables previstos para los pines %3 a %4 están %5 pines de más: devuelva cada uno a su pin y lea el carril otra vez</translation>
  </message>
  <message>
   <source>On module %1, rail %2, the leads planned for pins %3 to %4 sit %5 pin too low: move each back to its own pin, then read the rail again</source>
   <translation>En el módulo %1, carril %2, los cables previstos para los pines %3 a %4 están %5 pin de menos: devuelva cada uno a su pin y lea el carril otra vez</translation>
  </message>
  <message>
   <source>On module %1, rail %2, the leads planned for pins %3 to %4 sit %5 pins too low: move each back to its own pin, then read the rail again</source>
   <translation>En el módulo %1, carril %2, los cables previstos para los pines %3 a %4 están %5 pines de menos: devuelva cada uno a su pin y lea el carril otra vez</translation>
  </message>
  <message>
   <source>Unplug rail %1 of module %2 and turn it round; then read it again</source>
   <translation>Desenchufe el carril %1 del módulo %2 y dele la vuelta; luego léalo otra vez</translation>
  </message>
  <message>
   <source>Exchange the plugs of rail %1 of module %2 and rail %3 of module %4; then read both again</source>
   <translation>Intercambie los conectores del carril %1 del módulo %2 y del carril %3 del módulo %4; luego lea los dos otra vez</translation>
  </message>
  <message>
   <source>Exchange modules %1 and %2 (or their addresses); then read both again</source>
   <translation>Intercambie los módulos %1 y %2 (o sus direcciones); luego lea los dos otra vez</translation>
  </message>
  <message>
   <source>Touch the tester's probe tips together, zero it, and read the field again: every reading is off by the same ohms</source>
   <translation>Junte las puntas del comprobador, póngalo a cero y lea el campo otra vez: todas las lecturas se desvían los mismos ohmios</translation>
  </message>
  <message>
   <source>Check gauge and material of the wire on the reels against the plan: all leads are off by one factor; correct the plan or the wire, then read again</source>
   <translation>Compare la sección y el material del hilo de los carretes con el plan: todos los cables se desvían en un mismo factor; corrija el plan o el hilo y lea otra vez</translation>
  </message>
  <message>
   <source>%1; no reading tells this from %2: to decide, %3</source>
   <translation>%1; ninguna lectura lo distingue de: %2. Para decidir: %3</translation>
  </message>
  <message>
   <source>%1; or it is, at %2 %, %3: to decide, %4</source>
   <translation>%1; o es, con un %2 %: %3. Para decidir: %4</translation>
  </message>
  <message>
   <source>an open circuit</source>
   <translation>un circuito abierto</translation>
  </message>
  <message>
   <source>a short</source>
   <translation>un cortocircuito</translation>
  </message>
  <message>
   <source>one igniter too few</source>
   <translation>un inflamador de menos</translation>
  </message>
  <message>
   <source>one igniter too many</source>
   <translation>un inflamador de más</translation>
  </message>
  <message>
   <source>a poor joint</source>
   <translation>una mala unión</translation>
  </message>
  <message>
   <source>a leak</source>
   <translation>una fuga</translation>
  </message>
  <message>
   <source>a loose contact</source>
   <translation>un contacto flojo</translation>
  </message>
  <message>
   <source>somebody else's lead</source>
   <translation>un cable ajeno</translation>
  </message>
  <message>
   <source>a lead of another length or gauge</source>
   <translation>un cable de otra longitud o sección</translation>
  </message>
  <message>
   <source>another type of igniter</source>
   <translation>otro tipo de inflamador</translation>
  </message>
  <message>
   <source>test leads that were not zeroed</source>
   <translation>puntas de prueba sin poner a cero</translation>
  </message>
  <message>
   <source>another wire throughout</source>
   <translation>otro hilo en todas partes</translation>
  </message>
  <message>
   <source>something that no reading explains</source>
   <translation>algo que ninguna lectura explica</translation>
  </message>
  <message>
   <source>see whether the shunt of %1 is still on</source>
   <translation>mirar si el puente de %1 sigue puesto</translation>
  </message>
  <message>
   <source>count the igniters on %1</source>
   <translation>contar los inflamadores en %1</translation>
  </message>
  <message>
   <source>tug each splice on %1 and read it again</source>
   <translation>tirar de cada unión en %1 y leer otra vez</translation>
  </message>
  <message>
   <source>see whether a splice on %1 is wet</source>
   <translation>mirar si alguna unión en %1 está mojada</translation>
  </message>
  <message>
   <source>tug the plug and the splices on %1 and read it again</source>
   <translation>tirar del conector y de las uniones en %1 y leer otra vez</translation>
  </message>
  <message>
   <source>compare the lead on %1 with the plan</source>
   <translation>comparar el cable en %1 con el plan</translation>
  </message>
  <message>
   <source>read the label of the igniter on %1</source>
   <translation>leer la etiqueta del inflamador en %1</translation>
  </message>
  <message>
   <source>touch the tester's probe tips together and read that</source>
   <translation>juntar las puntas del comprobador y leer</translation>
  </message>
  <message>
   <source>read gauge and material on the reels</source>
   <translation>leer la sección y el material en los carretes</translation>
  </message>
  <message>
   <source>unplug the lead on %1 and look at it</source>
   <translation>desenchufar el cable en %1 y mirarlo</translation>
  </message>
  <message>
   <source>read the tags of the leads on %1 and %2</source>
   <translation>leer las etiquetas de los cables en %1 y %2</translation>
  </message>
  <message>
   <source>pull the lead on %1: if its tag is that of the pin %2 below, the row is shifted</source>
   <translation>sacar el cable en %1: si su etiqueta es la del pin %2 más abajo, la fila está desplazada</translation>
  </message>
  <message>
   <source>pull the lead on %1: if its tag is that of the pin %2 above, the row is shifted</source>
   <translation>sacar el cable en %1: si su etiqueta es la del pin %2 más arriba, la fila está desplazada</translation>
  </message>
  <message>
   <source>see which way round rail %1 of module %2 is plugged</source>
   <translation>mirar en qué sentido está enchufado el carril %1 del módulo %2</translation>
  </message>
  <message>
   <source>read the tags on the plugs of rail %1, module %2 and rail %3, module %4</source>
   <translation>leer las etiquetas de los conectores del carril %1, módulo %2 y del carril %3, módulo %4</translation>
  </message>
  <message>
   <source>read the number plates and addresses of modules %1 and %2</source>
   <translation>leer las placas y las direcciones de los módulos %1 y %2</translation>
  </message>
  <message>
   <source>%1 and %2 exchanged</source>
   <translation>%1 y %2 intercambiados</translation>
  </message>
  <message>
   <source>pins %1 to %2 of rail %3, module %4 shifted by %5</source>
   <translation>los pines %1 a %2 del carril %3, módulo %4 desplazados en %5</translation>
  </message>
  <message>
   <source>rail %1 of module %2 turned round</source>
   <translation>el carril %1 del módulo %2 dado la vuelta</translation>
  </message>
  <message>
   <source>rail %1 of module %2 and rail %3 of module %4 exchanged</source>
   <translation>el carril %1 del módulo %2 y el carril %3 del módulo %4 intercambiados</translation>
  </message>
  <message>
   <source>modules %1 and %2 exchanged</source>
   <translation>los módulos %1 y %2 intercambiados</translation>
  </message>
  <message>
   <source>50 mA, WAC 212-17-317(6)</source>
   <translation>50 mA, WAC 212-17-317(6)</translation>
  </message>
  <message>
   <source>the maker's test_max_a of %1</source>
   <translation>el test_max_a del fabricante de %1</translation>
  </message>
  <message>
   <source>%1 % of the no-fire current of %2</source>
   <translation>el %1 % de la corriente de no encendido de %2</translation>
  </message>
  <message>
   <source>The tester's current cannot be judged: its profile gives no test_current_a; look at the meter's and the igniters' data sheets before you connect it</source>
   <translation>La corriente del comprobador no se puede juzgar: su perfil no da test_current_a; mire las hojas de datos del medidor y de los inflamadores antes de conectarlo</translation>
  </message>
  <message>
   <source>The tester's current cannot be judged: %1 has no no_fire_a; type it in from the maker's data sheet before you connect the tester</source>
   <translation>La corriente del comprobador no se puede juzgar: %1 no tiene no_fire_a; escríbala según la hoja del fabricante antes de conectar el comprobador</translation>
  </message>
  <message>
   <source>The tester drives %1 mA into a short, the limit is %2 mA (%3)</source>
   <translation>El comprobador da %1 mA en cortocircuito, el límite es %2 mA (%3)</translation>
  </message>
  <message>
   <source>The tester drives %1 mA into a short, not above the limit of %2 mA (%3)</source>
   <translation>El comprobador da %1 mA en cortocircuito, no más que el límite de %2 mA (%3)</translation>
  </message>
  <message>
   <source>reading with this tester is refused</source>
   <translation>se rechaza leer con este comprobador</translation>
  </message>
  <message>
   <source>use a tester that stays below it</source>
   <translation>use un comprobador que quede por debajo</translation>
  </message>
  <message>
   <source>The firing current of %1 cannot be judged: its igniter or its wire is not in the igniter file; add it there and import the plan again</source>
   <translation>La corriente de disparo de %1 no se puede juzgar: su inflamador o su hilo no está en el archivo de inflamadores; añádalo e importe el plan otra vez</translation>
  </message>
  <message>
   <source>The firing current cannot be judged: the igniter file has no [supply]</source>
   <translation>La corriente de disparo no se puede juzgar: el archivo de inflamadores no tiene [supply]</translation>
  </message>
  <message>
   <source>The firing current cannot be judged: no all_fire_a is given for %1; take it from the maker's sheet</source>
   <translation>La corriente de disparo no se puede juzgar: no se da all_fire_a para %1; tómelo de la hoja del fabricante</translation>
  </message>
  <message>
   <source>%1: %2 A at least through each igniter, %3 times its all-fire current of %4 A</source>
   <translation>%1: al menos %2 A por cada inflamador, %3 veces su corriente de fuego cierto de %4 A</translation>
  </message>
  <message>
   <source>%1; the loop may have %2 ohm, it has %3</source>
   <translation>%1; el lazo puede tener %2 ohmios, tiene %3</translation>
  </message>
  <message>
   <source>%1; in a series string the fastest bridge may part before the slowest has started: use the maker's series current</source>
   <translation>%1; en una serie, el puente más rápido puede romperse antes de que el más lento empiece: use la corriente en serie del fabricante</translation>
  </message>
  <message>
   <source>not answered yet</source>
   <translation>sin respuesta todavía</translation>
  </message>
  <message>
   <source>due at %1, not answered yet</source>
   <translation>para las %1, sin respuesta todavía</translation>
  </message>
  <message>
   <source>waits for its second signature</source>
   <translation>espera su segunda firma</translation>
  </message>
  <message>
   <source>was answered more than %1 ago</source>
   <translation>se respondió hace más de %1</translation>
  </message>
  <message>
   <source>was read more than %1 ago</source>
   <translation>se leyó hace más de %1</translation>
  </message>
  <message>
   <source>waived by %1 and %2: %3 (%4)</source>
   <translation>eximido por %1 y %2: %3 (%4)</translation>
  </message>
  <message>
   <source>the show has no site to measure on</source>
   <translation>el espectáculo no tiene un terreno en el que medir</translation>
  </message>
  <message>
   <source>the wait after the last thunder is over</source>
   <translation>la espera tras el último trueno terminó</translation>
  </message>
  <message>
   <source>no thunder near enough was told</source>
   <translation>no se avisó de ningún trueno cercano</translation>
  </message>
  <message>
   <source>thunder: wait until %1</source>
   <translation>trueno: esperar hasta las %1</translation>
  </message>
  <message>
   <source>wait until %1</source>
   <translation>esperar hasta las %1</translation>
  </message>
  <message>
   <source>the wait is over</source>
   <translation>la espera terminó</translation>
  </message>
  <message>
   <source>the wait begins with %1</source>
   <translation>la espera empieza con %1</translation>
  </message>
  <message>
   <source>%1 has the %2</source>
   <translation>%1 tiene: %2</translation>
  </message>
  <message>
   <source>%1 has the %2, in the field</source>
   <translation>%1 tiene: %2, en el campo</translation>
  </message>
  <message>
   <source>the %1 is in the %2</source>
   <translation>%1 está en: %2</translation>
  </message>
  <message>
   <source>the tag of %1 is not back</source>
   <translation>la ficha de %1 no ha vuelto</translation>
  </message>
  <message>
   <source>%1 while %2 is in the field</source>
   <translation>%1 mientras %2 está en el campo</translation>
  </message>
  <message>
   <source>%1; it has to be %2</source>
   <translation>%1; debe estar: %2</translation>
  </message>
  <message>
   <source>%1 or %2</source>
   <translation>%1 o %2</translation>
  </message>
  <message>
   <source>with the %1</source>
   <translation>con %1</translation>
  </message>
  <message>
   <source>in the %1</source>
   <translation>en %1</translation>
  </message>
  <message>
   <source>nobody is in the field</source>
   <translation>no hay nadie en el campo</translation>
  </message>
  <message>
   <source>%1 is in the field</source>
   <translation>%1 está en el campo</translation>
  </message>
  <message>
   <source>%1 are in the field: %2</source>
   <translation>%1 están en el campo: %2</translation>
  </message>
  <message>
   <source>gusts of %1 are above %2</source>
   <translation>rachas de %1 superan %2</translation>
  </message>
  <message>
   <source>a mean wind of %1 is above %2</source>
   <translation>un viento medio de %1 supera %2</translation>
  </message>
  <message>
   <source>gusts of %1 are above %2, over %3</source>
   <translation>rachas de %1 superan %2, en %3</translation>
  </message>
  <message>
   <source>a mean wind of %1 is above %2, over %3</source>
   <translation>un viento medio de %1 supera %2, en %3</translation>
  </message>
  <message>
   <source>the last wind was read by somebody who may not</source>
   <translation>el último viento lo leyó alguien que no puede</translation>
  </message>
  <message>
   <source>mean %1, gusts %2, by %3</source>
   <translation>media %1, rachas %2, de %3</translation>
  </message>
  <message>
   <source>no wind over %1 was read yet</source>
   <translation>aún no se leyó viento en %1</translation>
  </message>
  <message>
   <source>nothing is known</source>
   <translation>no se sabe nada</translation>
  </message>
  <message>
   <source>no pin is planned, so there is nothing that could fit</source>
   <translation>no hay ningún pin previsto, así que nada puede encajar</translation>
  </message>
  <message>
   <source>all %1 planned pins fit</source>
   <translation>los %1 pines previstos encajan todos</translation>
  </message>
  <message>
   <source>%1 of %2 planned pins fit, %3 is waived by name</source>
   <translation>%1 de %2 pines previstos encajan, %3 está eximido por su nombre</translation>
  </message>
  <message>
   <source>%1 of %2 planned pins fit, %3 are waived by name</source>
   <translation>%1 de %2 pines previstos encajan, %3 están eximidos por su nombre</translation>
  </message>
  <message>
   <source>of %1 planned pins %2</source>
   <translation>de %1 pines previstos: %2</translation>
  </message>
  <message>
   <source>%1 is unread</source>
   <translation>%1 sin leer</translation>
  </message>
  <message>
   <source>%1 are unread</source>
   <translation>%1 sin leer</translation>
  </message>
  <message>
   <source>%1 was read too long ago</source>
   <translation>%1 leído hace demasiado</translation>
  </message>
  <message>
   <source>%1 were read too long ago</source>
   <translation>%1 leídos hace demasiado</translation>
  </message>
  <message>
   <source>%1 are unread, %2</source>
   <translation>%1 sin leer, %2</translation>
  </message>
  <message>
   <source>%1 is unread, %2</source>
   <translation>%1 sin leer, %2</translation>
  </message>
  <message>
   <source>%1 was read too long ago, %2</source>
   <translation>%1 leído hace demasiado, %2</translation>
  </message>
  <message>
   <source>%1 were read too long ago, %2</source>
   <translation>%1 leídos hace demasiado, %2</translation>
  </message>
  <message>
   <source>%1 does not fit (%2)</source>
   <translation>%1 no encaja (%2)</translation>
  </message>
  <message>
   <source>%1 do not fit (%2)</source>
   <translation>%1 no encajan (%2)</translation>
  </message>
  <message>
   <source>%1 fits</source>
   <translation>%1 encaja</translation>
  </message>
  <message>
   <source>%1 doubtful</source>
   <translation>%1 dudoso</translation>
  </message>
  <message>
   <source>%1 low</source>
   <translation>%1 bajo</translation>
  </message>
  <message>
   <source>%1 high</source>
   <translation>%1 alto</translation>
  </message>
  <message>
   <source>%1 open</source>
   <translation>%1 abierto</translation>
  </message>
  <message>
   <source>%1 short</source>
   <translation>%1 en corto</translation>
  </message>
  <message>
   <source>%1 unsteady</source>
   <translation>%1 inestable</translation>
  </message>
  <message>
   <source>%1 stray</source>
   <translation>%1 extraño</translation>
  </message>
  <message>
   <source>%1 unread</source>
   <translation>%1 sin leer</translation>
  </message>
  <message>
   <source>%1 stale</source>
   <translation>%1 caduco</translation>
  </message>
  <message>
   <source>was found: %1</source>
   <translation>se encontró: %1</translation>
  </message>
  <message>
   <source>%1 is below %2</source>
   <translation>%1 está por debajo de %2</translation>
  </message>
  <message>
   <source>%1 is above %2</source>
   <translation>%1 está por encima de %2</translation>
  </message>
  <message>
   <source>%1; %2</source>
   <translation>%1; %2</translation>
  </message>
  <message>
   <source>the clock went back over a restart, so its age is not known</source>
   <translation>el reloj retrocedió en un reinicio, así que su edad no se conoce</translation>
  </message>
  <message>
   <source>the wall clock stepped</source>
   <translation>el reloj saltó</translation>
  </message>
  <message>
   <source>the machine was started anew</source>
   <translation>la máquina se reinició</translation>
  </message>
  <message>
   <source>the machine slept</source>
   <translation>la máquina se durmió</translation>
  </message>
  <message>
   <source>comes up again after the restart</source>
   <translation>vuelve tras el reinicio</translation>
  </message>
  <message>
   <source>comes up again after a break</source>
   <translation>vuelve tras una pausa</translation>
  </message>
  <message>
   <source>comes up again after the hold</source>
   <translation>vuelve tras el alto</translation>
  </message>
  <message>
   <source>a pin was read after the release</source>
   <translation>se leyó un pin después de la autorización</translation>
  </message>
  <message>
   <source>thunder was heard</source>
   <translation>se oyó un trueno</translation>
  </message>
  <message>
   <source>pins were hooked up anew</source>
   <translation>se reconectaron pines</translation>
  </message>
  <message>
   <source>the show was moved to %1</source>
   <translation>el espectáculo se movió a las %1</translation>
  </message>
  <message>
   <source>a hold was called</source>
   <translation>se pidió un alto</translation>
  </message>
  <message>
   <source>%1 called a hold</source>
   <translation>%1 pidió un alto</translation>
  </message>
  <message>
   <source>%1 called a hold: %2</source>
   <translation>%1 pidió un alto: %2</translation>
  </message>
  <message>
   <source>%1 went into the field</source>
   <translation>%1 entró en el campo</translation>
  </message>
  <message>
   <source>%1 went into the field: %2</source>
   <translation>%1 entró en el campo: %2</translation>
  </message>
  <message>
   <source>%1 went to %2</source>
   <translation>%1 pasó a %2</translation>
  </message>
  <message>
   <source>%1 withdrew it</source>
   <translation>%1 la retiró</translation>
  </message>
  <message>
   <source>%1 withdrew it: %2</source>
   <translation>%1 la retiró: %2</translation>
  </message>
  <message>
   <source>the record was closed</source>
   <translation>el registro se cerró</translation>
  </message>
  <message>
   <source>the record was closed: %1</source>
   <translation>el registro se cerró: %1</translation>
  </message>
  <message>
   <source>every item holds</source>
   <translation>todos los puntos se mantienen</translation>
  </message>
  <message>
   <source>stands until %1 expires</source>
   <translation>vale hasta que %1 venza</translation>
  </message>
  <message>
   <source>no stage is part of the release</source>
   <translation>ninguna etapa forma parte de la autorización</translation>
  </message>
  <message>
   <source>the pause after "%1" is not closed</source>
   <translation>la pausa después de «%1» no está cerrada</translation>
  </message>
  <message>
   <source>%1 is open: %2</source>
   <translation>%1 está por hacer: %2</translation>
  </message>
  <message>
   <source>%1 is due: %2</source>
   <translation>%1 está atrasado: %2</translation>
  </message>
  <message>
   <source>%1 is expired: %2</source>
   <translation>%1 está vencido: %2</translation>
  </message>
  <message>
   <source>%1 is broken: %2</source>
   <translation>%1 está roto: %2</translation>
  </message>
  <message>
   <source>%1 is refused: %2</source>
   <translation>%1 está rechazado: %2</translation>
  </message>
  <message>
   <source>every item holds to the end of the show at %1</source>
   <translation>todos los puntos se mantienen hasta el final del espectáculo a las %1</translation>
  </message>
  <message>
   <source>a release for %1 is possible: begin %2 by %3</source>
   <translation>es posible una autorización para las %1: empezar %2 antes de las %3</translation>
  </message>
  <message>
   <source>no show time is set</source>
   <translation>no hay hora de espectáculo fijada</translation>
  </message>
  <message>
   <source>the show of %1 was released; nothing has to begin before it any more</source>
   <translation>el espectáculo de las %1 se autorizó; nada tiene que empezar ya antes</translation>
  </message>
  <message>
   <source>%1 lasts only %2: answered by %3 it would not hold to the end of the show at %4</source>
   <translation>%1 solo vale %2: respondido a las %3 no duraría hasta el final del espectáculo a las %4</translation>
  </message>
  <message>
   <source>%1 cannot be done before %2, and had to be by %3: move the show by %4 or more</source>
   <translation>%1 no se puede hacer antes de las %2 y debía estar a las %3: mueva el espectáculo %4 o más</translation>
  </message>
  <message>
   <source>as planned, %1 expires %2 before the show: answer it again between %3 and %4</source>
   <translation>según lo previsto, %1 vence %2 antes del espectáculo: respóndalo otra vez entre las %3 y las %4</translation>
  </message>
  <message>
   <source>as planned, %1 expires %2 before the end of the show: answer it again between %3 and %4</source>
   <translation>según lo previsto, %1 vence %2 antes del final del espectáculo: respóndalo otra vez entre las %3 y las %4</translation>
  </message>
  <message>
   <source>%1: all %2 distances are kept</source>
   <translation>%1: se cumplen las %2 distancias</translation>
  </message>
  <message>
   <source>%1: %2, and %3 more</source>
   <translation>%1: %2, y %3 más</translation>
  </message>
  <message>
   <source>%1 lies inside %2, or too near its edge to tell</source>
   <translation>%1 está dentro de %2, o demasiado cerca del borde para saberlo</translation>
  </message>
  <message>
   <source>%1 does not say how far %2 must be from %3: %4</source>
   <translation>%1 no dice a qué distancia debe estar %2 de %3: %4</translation>
  </message>
  <message>
   <source>%1 is %2 from %3; %4 asks for %5</source>
   <translation>%1 está a %2 de %3; %4 pide %5</translation>
  </message>
  <message>
   <source>%1 lies outside the ground that is kept clear</source>
   <translation>%1 está fuera del terreno que se mantiene libre</translation>
  </message>
  <message>
   <source>the site does not show where %1 is</source>
   <translation>el terreno no muestra dónde está %1</translation>
  </message>
  <message>
   <source>the site shows no audience to measure to</source>
   <translation>el terreno no muestra público hasta el que medir</translation>
  </message>
  <message>
   <source>%1 mm is above its largest calibre, %2 mm</source>
   <translation>%1 mm supera su mayor calibre, %2 mm</translation>
  </message>
  <message>
   <source>it has cues without a calibre, and the table no distance for those</source>
   <translation>tiene cues sin calibre, y la tabla ninguna distancia para ellos</translation>
  </message>
  <message>
   <source>%1 over range</source>
   <translation>%1 fuera de rango</translation>
  </message>
  <message>
   <source>%1 %2 ohm</source>
   <translation>%1 %2 ohmios</translation>
  </message>
  <message>
   <source>%1 answered %2: %3</source>
   <translation>%1 respondió a %2: %3</translation>
  </message>
  <message>
   <source>%1 is enrolled as %2</source>
   <translation>%1 está inscrito como %2</translation>
  </message>
  <message>
   <source>%1 looked and confirms: %2</source>
   <translation>%1 miró y confirma: %2</translation>
  </message>
  <message>
   <source>%1 closed the pause after "%2"</source>
   <translation>%1 cerró la pausa después de «%2»</translation>
  </message>
  <message>
   <source>%1 set the show for %2</source>
   <translation>%1 fijó el espectáculo a las %2</translation>
  </message>
  <message>
   <source>wind: mean %1 m/s, gusts %2 m/s over %3, by %4</source>
   <translation>viento: media %1 m/s, rachas %2 m/s en %3, de %4</translation>
  </message>
  <message>
   <source>the instrument</source>
   <translation>el instrumento</translation>
  </message>
  <message>
   <source>instrument</source>
   <translation>instrumento</translation>
  </message>
  <message>
   <source>somebody</source>
   <translation>alguien</translation>
  </message>
  <message>
   <source>thunder was heard, %1 s after its flash</source>
   <translation>se oyó un trueno, %1 s después del relámpago</translation>
  </message>
  <message>
   <source>%1 is out of the field</source>
   <translation>%1 está fuera del campo</translation>
  </message>
  <message>
   <source>%1 hung a tag</source>
   <translation>%1 puso una ficha</translation>
  </message>
  <message>
   <source>%1 has the tag back</source>
   <translation>%1 recuperó la ficha</translation>
  </message>
  <message>
   <source>%1 says that %2 is out of the field</source>
   <translation>%1 dice que %2 está fuera del campo</translation>
  </message>
  <message>
   <source>%1 says that %2 is out of the field: %3</source>
   <translation>%1 dice que %2 está fuera del campo: %3</translation>
  </message>
  <message>
   <source>%1 says that %2 has the tag back</source>
   <translation>%1 dice que %2 recuperó la ficha</translation>
  </message>
  <message>
   <source>%1 says that %2 has the tag back: %3</source>
   <translation>%1 dice que %2 recuperó la ficha: %3</translation>
  </message>
  <message>
   <source>%1 says that %2 hung a tag</source>
   <translation>%1 dice que %2 puso una ficha</translation>
  </message>
  <message>
   <source>%1 signed for the %2 that %3 holds</source>
   <translation>%1 firmó por: %2, aún con %3</translation>
  </message>
  <message>
   <source>%1 gave the %2 to %3</source>
   <translation>%1 entregó a %3: %2</translation>
  </message>
  <message>
   <source>%1 put the %2 into the %3</source>
   <translation>%1 puso en %3: %2</translation>
  </message>
  <message>
   <source>%1 took the %2 out of the %3</source>
   <translation>%1 tomó de %3: %2</translation>
  </message>
  <message>
   <source>%1 lifted the hold</source>
   <translation>%1 levantó el alto</translation>
  </message>
  <message>
   <source>%1 lifted the hold: %2</source>
   <translation>%1 levantó el alto: %2</translation>
  </message>
  <message>
   <source>%1 waives %2, which reads %3</source>
   <translation>%1 exime %2, que está: %3</translation>
  </message>
  <message>
   <source>%1 waives %2, which reads %3: %4</source>
   <translation>%1 exime %2, que está %3: %4</translation>
  </message>
  <message>
   <source>%1 waives %2</source>
   <translation>%1 exime %2</translation>
  </message>
  <message>
   <source>%1 waives %2: %3</source>
   <translation>%1 exime %2: %3</translation>
  </message>
  <message>
   <source>%1 signed the release</source>
   <translation>%1 firmó la autorización</translation>
  </message>
  <message>
   <source>%1 withdrew the release</source>
   <translation>%1 retiró la autorización</translation>
  </message>
  <message>
   <source>%1 withdrew the release: %2</source>
   <translation>%1 retiró la autorización: %2</translation>
  </message>
  <message>
   <source>hooked up anew: %1</source>
   <translation>reconectado: %1</translation>
  </message>
  <message>
   <source>hooked up anew: %1 (%2)</source>
   <translation>reconectado: %1 (%2)</translation>
  </message>
  <message>
   <source>the whole field</source>
   <translation>todo el campo</translation>
  </message>
  <message>
   <source>module %1 rail %2</source>
   <translation>módulo %1 carril %2</translation>
  </message>
  <message>
   <source>module %1</source>
   <translation>módulo %1</translation>
  </message>
  <message>
   <source>a line was not taken: %1</source>
   <translation>no se tomó una línea: %1</translation>
  </message>
  <message>
   <source>the field reads: %1</source>
   <translation>el campo se lee: %1</translation>
  </message>
  <message>
   <source>%1 states: %2</source>
   <translation>%1 declara: %2</translation>
  </message>
  <message>
   <source>the record was opened, with the checklist "%1"</source>
   <translation>el registro se abrió, con la lista «%1»</translation>
  </message>
  <message>
   <source>the program was started anew</source>
   <translation>el programa se reinició</translation>
  </message>
  <message>
   <source>the machine slept for %1</source>
   <translation>la máquina durmió %1</translation>
  </message>
  <message>
   <source>the wall clock stepped back by %1</source>
   <translation>el reloj retrocedió %1</translation>
  </message>
  <message>
   <source>the wall clock stepped on by %1</source>
   <translation>el reloj avanzó %1</translation>
  </message>
  <message>
   <source>a crash left lines that were never acknowledged; they are kept in %1</source>
   <translation>una caída dejó líneas nunca confirmadas; se guardan en %1</translation>
  </message>
  <message>
   <source>a witness's signature that cannot be read</source>
   <translation>la firma de un testigo que no se puede leer</translation>
  </message>
  <message>
   <source>%1 signed as a witness that the first %2 entries stood at %3</source>
   <translation>%1 atestiguó que las primeras %2 entradas estaban a las %3</translation>
  </message>
  <message>
   <source>a time-stamp that does not hold</source>
   <translation>un sello de tiempo que no se sostiene</translation>
  </message>
  <message>
   <source>%1 signed that the first %2 entries stood at %3 (RFC 3161 time-stamp)</source>
   <translation>%1 firmó que las primeras %2 entradas estaban a las %3 (sello de tiempo RFC 3161)</translation>
  </message>
  <message>
   <source>the checksum is missing</source>
   <translation>falta la suma de control</translation>
  </message>
  <message>
   <source>the checksum is %1, the line itself gives %2</source>
   <translation>la suma de control es %1, la línea misma da %2</translation>
  </message>
  <message>
   <source>the unit %1 is not one of resistance</source>
   <translation>la unidad %1 no es de resistencia</translation>
  </message>
  <message>
   <source>the tester says that it has no number</source>
   <translation>el comprobador dice que no tiene número</translation>
  </message>
  <message>
   <source>the value %1 is neither a number nor a word for above range</source>
   <translation>el valor %1 no es ni un número ni una palabra para fuera de rango</translation>
  </message>
  <message>
   <source>the value %1 is outside -1000 ohm .. 1e9 ohm</source>
   <translation>el valor %1 está fuera de -1000 ohmios .. 1e9 ohmios</translation>
  </message>
  <message>
   <source>the line is longer than 4096 bytes</source>
   <translation>la línea pasa de 4096 bytes</translation>
  </message>
  <message>
   <source>the line is blank</source>
   <translation>la línea está vacía</translation>
  </message>
  <message>
   <source>the line has a NUL byte inside: a byte was damaged on the way</source>
   <translation>la línea contiene un byte NUL: un byte se dañó en el camino</translation>
  </message>
  <message>
   <source>the line is not in the form that the tester profile describes</source>
   <translation>la línea no tiene la forma que describe el perfil del comprobador</translation>
  </message>
  <message>
   <source>the line number %1 is not a whole number</source>
   <translation>el número de línea %1 no es entero</translation>
  </message>
  <message>
   <source>the %1 is not a number from 1 to 9999</source>
   <translation>%1 no es un número de 1 a 9999</translation>
  </message>
  <message>
   <source>the line was cut off when the port went away</source>
   <translation>la línea se cortó cuando el puerto desapareció</translation>
  </message>
  <message>
   <source>the first line after the port was opened may lack its beginning</source>
   <translation>a la primera línea tras abrir el puerto puede faltarle el principio</translation>
  </message>
  <message>
   <source>the checksum is missing, and most lines of this tester carry one</source>
   <translation>falta la suma de control, y la mayoría de las líneas de este comprobador la llevan</translation>
  </message>
  <message>
   <source>"%1" is none of the states that %2 can be in</source>
   <translation>«%1» no es ninguno de los estados que puede tener %2</translation>
  </message>
  <message>
   <source>choose what was seen: %1</source>
   <translation>elija lo que se vio: %1</translation>
  </message>
  <message>
   <source>the number of groups looked at is not the number there are</source>
   <translation>el número de grupos mirados no es el que hay</translation>
  </message>
  <message>
   <source>walk the whole list of pins that read alike</source>
   <translation>recorra toda la lista de pines iguales</translation>
  </message>
  <message>
   <source>%1 is answered by a number</source>
   <translation>a %1 se responde con un número</translation>
  </message>
  <message>
   <source>give it in %1</source>
   <translation>délo en %1</translation>
  </message>
  <message>
   <source>%1 is answered by what was seen or heard</source>
   <translation>a %1 se responde con lo que se vio u oyó</translation>
  </message>
  <message>
   <source>write it in one line, in your own words</source>
   <translation>escríbalo en una línea, con sus palabras</translation>
  </message>
  <message>
   <source>%1 needs a file's SHA-256</source>
   <translation>%1 necesita el SHA-256 de un archivo</translation>
  </message>
  <message>
   <source>choose the file</source>
   <translation>elija el archivo</translation>
  </message>
  <message>
   <source>%1 rests on %2, which is %3: %4</source>
   <translation>%1 se apoya en %2, que está %3: %4</translation>
  </message>
  <message>
   <source>open</source>
   <translation>por hacer</translation>
  </message>
  <message>
   <source>due</source>
   <translation>atrasado</translation>
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
   <source>see to that first</source>
   <translation>ocúpese primero de eso</translation>
  </message>
  <message>
   <source>%1 is not answered by anyone: it follows from what is</source>
   <translation>nadie responde a %1: se sigue de lo que hay</translation>
  </message>
  <message>
   <source>read the wind and enter that</source>
   <translation>lea el viento y anótelo</translation>
  </message>
  <message>
   <source>see to what it is about, and it will hold by itself</source>
   <translation>ocúpese del asunto y se mantendrá solo</translation>
  </message>
  <message>
   <source>it does not say what it confirms</source>
   <translation>no dice qué confirma</translation>
  </message>
  <message>
   <source>name the entry</source>
   <translation>nombre la entrada</translation>
  </message>
  <message>
   <source>entry %1 waits for no second signature</source>
   <translation>la entrada %1 no espera segunda firma</translation>
  </message>
  <message>
   <source>look at the list of those that wait; what was broken since is done anew</source>
   <translation>mire la lista de las que esperan; lo que se rompió desde entonces se hace de nuevo</translation>
  </message>
  <message>
   <source>one person cannot sign twice</source>
   <translation>una persona no puede firmar dos veces</translation>
  </message>
  <message>
   <source>let somebody else look and sign</source>
   <translation>que otra persona mire y firme</translation>
  </message>
  <message>
   <source>what is confirmed is not what was claimed: %1</source>
   <translation>lo que se confirma no es lo que se afirmó: %1</translation>
  </message>
  <message>
   <source>look again and confirm what was claimed, or let it be claimed anew</source>
   <translation>mire otra vez y confirme lo afirmado, o que se afirme de nuevo</translation>
  </message>
  <message>
   <source>the first signature is too old to be confirmed</source>
   <translation>la primera firma es demasiado antigua para confirmarla</translation>
  </message>
  <message>
   <source>sign both anew</source>
   <translation>firmen las dos de nuevo</translation>
  </message>
  <message>
   <source>the checklist has no such stage: %1</source>
   <translation>la lista no tiene esa etapa: %1</translation>
  </message>
  <message>
   <source>choose one of these: %1</source>
   <translation>elija entre: %1</translation>
  </message>
  <message>
   <source>%1 has closed this pause already</source>
   <translation>%1 ya cerró esta pausa</translation>
  </message>
  <message>
   <source>go on with the next stage</source>
   <translation>siga con la etapa siguiente</translation>
  </message>
  <message>
   <source>the release itself closes this stage</source>
   <translation>la autorización misma cierra esta etapa</translation>
  </message>
  <message>
   <source>sign the release</source>
   <translation>firme la autorización</translation>
  </message>
  <message>
   <source>see to it first, or let the lead waive it with a reason</source>
   <translation>ocúpese primero, o que el responsable lo exima con un motivo</translation>
  </message>
  <message>
   <source>the checklist asks nobody for the wind</source>
   <translation>la lista no pide el viento a nadie</translation>
  </message>
  <message>
   <source>keep it as a note, or begin a record with a checklist that has a wind item</source>
   <translation>guárdelo como nota, o empiece un registro con una lista que tenga un punto de viento</translation>
  </message>
  <message>
   <source>a mean wind is over 10 min or 2 min</source>
   <translation>un viento medio es en 10 min o 2 min</translation>
  </message>
  <message>
   <source>give one of the two</source>
   <translation>dé uno de los dos</translation>
  </message>
  <message>
   <source>a wind has a mean, and gusts no lower than it, up to 120 m/s</source>
   <translation>un viento tiene una media, y rachas no menores, hasta 120 m/s</translation>
  </message>
  <message>
   <source>give both in m/s, and the highest 3 s mean as the gust</source>
   <translation>dé los dos en m/s, y como racha la mayor media de 3 s</translation>
  </message>
  <message>
   <source>it does not say when the show is</source>
   <translation>no dice cuándo es el espectáculo</translation>
  </message>
  <message>
   <source>give a date and a time of day</source>
   <translation>dé una fecha y una hora</translation>
  </message>
  <message>
   <source>no clock on the wall is so far from UTC</source>
   <translation>ningún reloj está tan lejos de UTC</translation>
  </message>
  <message>
   <source>give its distance from UTC, 14 h at most</source>
   <translation>dé su distancia a UTC, 14 h como mucho</translation>
  </message>
  <message>
   <source>there is no such key: %1</source>
   <translation>no hay tal llave: %1</translation>
  </message>
  <message>
   <source>begin a record with a checklist that has one</source>
   <translation>empiece un registro con una lista que la tenga</translation>
  </message>
  <message>
   <source>let its owner take it back first</source>
   <translation>que su dueño la recupere primero</translation>
  </message>
  <message>
   <source>%1 does not hold this key, %2 does</source>
   <translation>%1 no tiene esta llave, la tiene %2</translation>
  </message>
  <message>
   <source>%1 does not hold this key, the %2 does</source>
   <translation>%1 no tiene esta llave, está en: %2</translation>
  </message>
  <message>
   <source>let the holder do it</source>
   <translation>que lo haga quien la tiene</translation>
  </message>
  <message>
   <source>take it from there first</source>
   <translation>tómela primero de ahí</translation>
  </message>
  <message>
   <source>take it from there</source>
   <translation>tómela de ahí</translation>
  </message>
  <message>
   <source>let them come out and sign out first</source>
   <translation>que salgan y firmen la salida primero</translation>
  </message>
  <message>
   <source>a hold is on: %1</source>
   <translation>hay un alto: %1</translation>
  </message>
  <message>
   <source>let the lead lift it first</source>
   <translation>que el responsable lo levante primero</translation>
  </message>
  <message>
   <source>%1 is in the %2, in nobody's hand</source>
   <translation>%1 está en %2, en manos de nadie</translation>
  </message>
  <message>
   <source>%1 holds this key already</source>
   <translation>%1 ya tiene esta llave</translation>
  </message>
  <message>
   <source>let somebody else sign for it</source>
   <translation>que firme otra persona</translation>
  </message>
  <message>
   <source>%1 holds this key</source>
   <translation>%1 tiene esta llave</translation>
  </message>
  <message>
   <source>sign for it from them</source>
   <translation>fírmela al recibirla de esa persona</translation>
  </message>
  <message>
   <source>the receiver has not signed for it</source>
   <translation>quien la recibe no ha firmado</translation>
  </message>
  <message>
   <source>let the receiver sign first</source>
   <translation>que firme primero quien la recibe</translation>
  </message>
  <message>
   <source>the key has no such place: %1</source>
   <translation>la llave no tiene ese lugar: %1</translation>
  </message>
  <message>
   <source>let them hand it over</source>
   <translation>que la entreguen</translation>
  </message>
  <message>
   <source>the key is in the %1</source>
   <translation>la llave está en: %1</translation>
  </message>
  <message>
   <source>an enrolment needs a name, a role and a key</source>
   <translation>una inscripción necesita nombre, función y clave</translation>
  </message>
  <message>
   <source>give all three</source>
   <translation>dé los tres</translation>
  </message>
  <message>
   <source>1,000 people are enrolled, and a day takes no more</source>
   <translation>hay 1.000 personas inscritas, y un día no admite más</translation>
  </message>
  <message>
   <source>begin another record</source>
   <translation>empiece otro registro</translation>
  </message>
  <message>
   <source>%1 is enrolled as %2 already</source>
   <translation>%1 ya está inscrito como %2</translation>
  </message>
  <message>
   <source>let them sign as that</source>
   <translation>que firmen como tal</translation>
  </message>
  <message>
   <source>%1 cannot be enrolled: name or key is that of %2</source>
   <translation>no se puede inscribir a %1: el nombre o la clave es de %2</translation>
  </message>
  <message>
   <source>one name has one key: give the other person another name, or the key of this name</source>
   <translation>un nombre tiene una clave: dé otro nombre a la otra persona, o la clave de este nombre</translation>
  </message>
  <message>
   <source>it does not say who</source>
   <translation>no dice quién</translation>
  </message>
  <message>
   <source>give the name</source>
   <translation>dé el nombre</translation>
  </message>
  <message>
   <source>%1 is not in the field</source>
   <translation>%1 no está en el campo</translation>
  </message>
  <message>
   <source>%1 has no tag out</source>
   <translation>%1 no tiene ficha puesta</translation>
  </message>
  <message>
   <source>look at who is out, and write the name as it stands there</source>
   <translation>mire quién está fuera, y escriba el nombre como figura ahí</translation>
  </message>
  <message>
   <source>only the owner can do this alone</source>
   <translation>solo el dueño puede hacerlo solo</translation>
  </message>
  <message>
   <source>give a reason, and let a second person sign</source>
   <translation>dé un motivo, y que firme una segunda persona</translation>
  </message>
  <message>
   <source>the tag of %1 is back: %2</source>
   <translation>la ficha de %1 volvió: %2</translation>
  </message>
  <message>
   <source>%1 is out of the field: %2</source>
   <translation>%1 está fuera del campo: %2</translation>
  </message>
  <message>
   <source>no hold is on</source>
   <translation>no hay ningún alto</translation>
  </message>
  <message>
   <source>go on</source>
   <translation>siga</translation>
  </message>
  <message>
   <source>another hold was called since: %1</source>
   <translation>se pidió otro alto desde entonces: %1</translation>
  </message>
  <message>
   <source>see to that one too, and lift both</source>
   <translation>ocúpese también de ese, y levante los dos</translation>
  </message>
  <message>
   <source>a hold is lifted with a reason</source>
   <translation>un alto se levanta con un motivo</translation>
  </message>
  <message>
   <source>write why</source>
   <translation>escriba por qué</translation>
  </message>
  <message>
   <source>a release stands already</source>
   <translation>ya hay una autorización vigente</translation>
  </message>
  <message>
   <source>take it back first if it must be signed anew</source>
   <translation>retírela primero si hay que firmarla de nuevo</translation>
  </message>
  <message>
   <source>the release</source>
   <translation>la autorización</translation>
  </message>
  <message>
   <source>nothing is released, so nothing can be taken back</source>
   <translation>no hay nada autorizado, así que nada se puede retirar</translation>
  </message>
  <message>
   <source>call a hold if the show has to stop</source>
   <translation>pida un alto si el espectáculo debe parar</translation>
  </message>
  <message>
   <source>a waiver needs a reason</source>
   <translation>una exención necesita un motivo</translation>
  </message>
  <message>
   <source>%1 cannot be waived by anyone</source>
   <translation>nadie puede eximir %1</translation>
  </message>
  <message>
   <source>see to it that it holds</source>
   <translation>haga que se mantenga</translation>
  </message>
  <message>
   <source>%1 needs no waiver: it holds</source>
   <translation>%1 no necesita exención: se mantiene</translation>
  </message>
  <message>
   <source>%1 waived: %2</source>
   <translation>eximido, %1: %2</translation>
  </message>
  <message>
   <source>the plan has no such pin: %1</source>
   <translation>el plan no tiene ese pin: %1</translation>
  </message>
  <message>
   <source>write it as M01/R1/P05</source>
   <translation>escríbalo como M01/R1/P05</translation>
  </message>
  <message>
   <source>the pin fits and needs no waiver</source>
   <translation>el pin encaja y no necesita exención</translation>
  </message>
  <message>
   <source>%1 reads %2 by now</source>
   <translation>%1 se lee ahora: %2</translation>
  </message>
  <message>
   <source>look at it again, and waive that if it must be</source>
   <translation>mírelo otra vez, y exímalo si es necesario</translation>
  </message>
  <message>
   <source>it is not signed</source>
   <translation>no está firmado</translation>
  </message>
  <message>
   <source>sign it</source>
   <translation>fírmelo</translation>
  </message>
  <message>
   <source>the checklist has no such item: %1</source>
   <translation>la lista no tiene ese punto: %1</translation>
  </message>
  <message>
   <source>write its id as the checklist has it</source>
   <translation>escriba su identificador como está en la lista</translation>
  </message>
  <message>
   <source>"%1" has not begun: nothing was released yet</source>
   <translation>«%1» no ha empezado: aún no se autorizó nada</translation>
  </message>
  <message>
   <source>"%1" has not begun: the pause before it is not closed</source>
   <translation>«%1» no ha empezado: la pausa anterior no está cerrada</translation>
  </message>
  <message>
   <source>it begins with the release</source>
   <translation>empieza con la autorización</translation>
  </message>
  <message>
   <source>finish "%1" and close its pause</source>
   <translation>termine «%1» y cierre su pausa</translation>
  </message>
  <message>
   <source>the gate is shut: %1</source>
   <translation>la puerta está cerrada: %1</translation>
  </message>
  <message>
   <source>see to that and %1 more thing</source>
   <translation>ocúpese de eso y de %1 cosa más</translation>
  </message>
  <message>
   <source>see to that and %1 more things</source>
   <translation>ocúpese de eso y de %1 cosas más</translation>
  </message>
  <message>
   <source>nobody is enrolled as %1 under the name %2</source>
   <translation>nadie está inscrito como %1 con el nombre %2</translation>
  </message>
  <message>
   <source>(no role)</source>
   <translation>(sin función)</translation>
  </message>
  <message>
   <source>(no name)</source>
   <translation>(sin nombre)</translation>
  </message>
  <message>
   <source>enrol the person first</source>
   <translation>inscriba primero a la persona</translation>
  </message>
  <message>
   <source>%1 may not do this as %2</source>
   <translation>%1 no puede hacer esto como %2</translation>
  </message>
  <message>
   <source>let one of the crew do it</source>
   <translation>que lo haga alguien del equipo</translation>
  </message>
  <message>
   <source>let a %1 do it</source>
   <translation>que lo haga: %1</translation>
  </message>
  <message>
   <source>a key cannot be named so</source>
   <translation>una clave no se puede llamar así</translation>
  </message>
  <message>
   <source>write the name in letters, with single spaces between</source>
   <translation>escriba el nombre en letras, con un solo espacio entre ellas</translation>
  </message>
  <message>
   <source>there is no key of %1</source>
   <translation>no hay clave de %1</translation>
  </message>
  <message>
   <source>make one with: walkdown crew add</source>
   <translation>haga una con: walkdown crew add</translation>
  </message>
  <message>
   <source>there is no such record</source>
   <translation>no hay tal registro</translation>
  </message>
  <message>
   <source>open a new one with its show</source>
   <translation>abra uno nuevo con su espectáculo</translation>
  </message>
  <message>
   <source>something else was written at the same moment; look again</source>
   <translation>se escribió otra cosa en el mismo momento; mire otra vez</translation>
  </message>
  <message>
   <source>this is no key file, or it was changed</source>
   <translation>no es un archivo de clave, o se modificó</translation>
  </message>
  <message>
   <source>take a copy of it that you kept, or make a new key</source>
   <translation>tome una copia guardada, o haga una clave nueva</translation>
  </message>
  <message>
   <source>the key cannot be read</source>
   <translation>la clave no se puede leer</translation>
  </message>
  <message>
   <source>the key cannot be kept</source>
   <translation>la clave no se puede guardar</translation>
  </message>
  <message>
   <source>there is a key of this name already</source>
   <translation>ya hay una clave con este nombre</translation>
  </message>
  <message>
   <source>choose another name</source>
   <translation>elija otro nombre</translation>
  </message>
  <message>
   <source>the passphrase is too short</source>
   <translation>la frase de paso es demasiado corta</translation>
  </message>
  <message>
   <source>take at least 8 characters</source>
   <translation>use al menos 8 caracteres</translation>
  </message>
  <message>
   <source>the passphrase is wrong</source>
   <translation>la frase de paso es incorrecta</translation>
  </message>
  <message>
   <source>type it again</source>
   <translation>escríbala otra vez</translation>
  </message>
  <message>
   <source>make room on the disk and resume the record; what was acknowledged is kept</source>
   <translation>haga sitio en el disco y reanude el registro; lo confirmado está guardado</translation>
  </message>
  <message>
   <source>choose a folder that you may write to</source>
   <translation>elija una carpeta en la que pueda escribir</translation>
  </message>
  <message>
   <source>the record cannot be written</source>
   <translation>el registro no se puede escribir</translation>
  </message>
  <message>
   <source>the record cannot be synced</source>
   <translation>el registro no se puede llevar al disco</translation>
  </message>
  <message>
   <source>the record cannot be locked</source>
   <translation>el registro no se puede bloquear</translation>
  </message>
  <message>
   <source>the record cannot be opened</source>
   <translation>el registro no se puede abrir</translation>
  </message>
  <message>
   <source>the record cannot be created</source>
   <translation>el registro no se puede crear</translation>
  </message>
  <message>
   <source>the record cannot be read</source>
   <translation>el registro no se puede leer</translation>
  </message>
  <message>
   <source>the record cannot be read: %1</source>
   <translation>el registro no se puede leer: %1</translation>
  </message>
  <message>
   <source>check the name</source>
   <translation>revise el nombre</translation>
  </message>
  <message>
   <source>another program is writing this record</source>
   <translation>otro programa está escribiendo este registro</translation>
  </message>
  <message>
   <source>stop that one first, or begin another record</source>
   <translation>pare ese primero, o empiece otro registro</translation>
  </message>
  <message>
   <source>there is a file of this name already</source>
   <translation>ya hay un archivo con este nombre</translation>
  </message>
  <message>
   <source>resume it if it is this show's record, or choose another name</source>
   <translation>reanúdelo si es el registro de este espectáculo, o elija otro nombre</translation>
  </message>
  <message>
   <source>this file holds no sealed entry, so nothing was acknowledged in it</source>
   <translation>este archivo no tiene ninguna entrada sellada, así que no se confirmó nada en él</translation>
  </message>
  <message>
   <source>begin a new record under another name</source>
   <translation>empiece un registro nuevo con otro nombre</translation>
  </message>
  <message>
   <source>begin a new record</source>
   <translation>empiece un registro nuevo</translation>
  </message>
  <message>
   <source>the record belongs to another station: %1</source>
   <translation>el registro es de otra estación: %1</translation>
  </message>
  <message>
   <source>go on at that station, or begin a new record</source>
   <translation>siga en esa estación, o empiece un registro nuevo</translation>
  </message>
  <message>
   <source>the record does not verify: %1</source>
   <translation>la verificación del registro falla: %1</translation>
  </message>
  <message>
   <source>keep this file as it is, and begin a new record</source>
   <translation>deje este archivo como está, y empiece un registro nuevo</translation>
  </message>
  <message>
   <source>cannot open the port</source>
   <translation>no se puede abrir el puerto</translation>
  </message>
  <message>
   <source>cannot set the port up</source>
   <translation>no se puede configurar el puerto</translation>
  </message>
  <message>
   <source>%1: no permission</source>
   <translation>%1: sin permiso</translation>
  </message>
  <message>
   <source>ask who runs this machine</source>
   <translation>pregunte a quien administra esta máquina</translation>
  </message>
  <message>
   <source>%1 belongs to the group %2, and you are not in it</source>
   <translation>%1 es del grupo %2, y usted no está en él</translation>
  </message>
  <message>
   <source>run 'sudo usermod -aG %1 "$USER"', log out and in again</source>
   <translation>ejecute 'sudo usermod -aG %1 "$USER"', cierre la sesión y vuelva a entrar</translation>
  </message>
  <message>
   <source>%1 is in use by another program</source>
   <translation>%1 lo usa otro programa</translation>
  </message>
  <message>
   <source>close that program, then try again</source>
   <translation>cierre ese programa y vuelva a intentarlo</translation>
  </message>
  <message>
   <source>%1 is not there</source>
   <translation>%1 no está</translation>
  </message>
  <message>
   <source>plug the tester in, and see 'ls /dev/serial/by-id' for its name</source>
   <translation>enchufe el comprobador, y busque su nombre con 'ls /dev/serial/by-id'</translation>
  </message>
  <message>
   <source>%1 is not a serial port</source>
   <translation>%1 no es un puerto serie</translation>
  </message>
  <message>
   <source>see the tester's sheet for its settings, and correct the profile</source>
   <translation>mire los ajustes en la hoja del comprobador, y corrija el perfil</translation>
  </message>
  <message>
   <source>correct the TOML</source>
   <translation>corrija el TOML</translation>
  </message>
  <message>
   <source>%1, row %2, column %3: %4</source>
   <translation>%1, fila %2, columna %3: %4</translation>
  </message>
  <message>
   <source>%1, row %2: %3</source>
   <translation>%1, fila %2: %3</translation>
  </message>
  <message>
   <source>%1, column %2: %3</source>
   <translation>%1, columna %2: %3</translation>
  </message>
  <message>
   <source>line %1, %2: %3</source>
   <translation>línea %1, %2: %3</translation>
  </message>
  <message>
   <source>this is UTF-16; save the table as CSV in UTF-8</source>
   <translation>esto es UTF-16; guarde la tabla como CSV en UTF-8</translation>
  </message>
  <message>
   <source>this is a spreadsheet file; save the table as CSV in UTF-8</source>
   <translation>esto es un archivo de hoja de cálculo; guarde la tabla como CSV en UTF-8</translation>
  </message>
  <message>
   <source>row %1 uses this pin already; give one of the two another pin</source>
   <translation>la fila %1 ya usa este pin; dé otro pin a una de las dos</translation>
  </message>
  <message>
   <source>the file is empty; the first row names the columns</source>
   <translation>el archivo está vacío; la primera fila nombra las columnas</translation>
  </message>
  <message>
   <source>this is no column of a plan</source>
   <translation>esto no es una columna de un plan</translation>
  </message>
  <message>
   <source>write a text in quotes</source>
   <translation>escriba un texto entre comillas</translation>
  </message>
  <message>
   <source>name the header that stands in the table</source>
   <translation>nombre el encabezado que figura en la tabla</translation>
  </message>
  <message>
   <source>this column has a header and a constant; keep one</source>
   <translation>esta columna tiene un encabezado y una constante; deje uno</translation>
  </message>
  <message>
   <source>cannot take the column map</source>
   <translation>no se puede tomar el mapa de columnas</translation>
  </message>
  <message>
   <source>a quote stands inside a field; put the whole field in quotes and double it</source>
   <translation>hay una comilla dentro de un campo; ponga todo el campo entre comillas y duplíquela</translation>
  </message>
  <message>
   <source>a quoted field is not closed; add the missing quote</source>
   <translation>un campo entre comillas no está cerrado; añada la comilla que falta</translation>
  </message>
  <message>
   <source>save the table as UTF-8</source>
   <translation>guarde la tabla como UTF-8</translation>
  </message>
  <message>
   <source>this header stands there twice; keep one of the columns</source>
   <translation>este encabezado está dos veces; deje una de las columnas</translation>
  </message>
  <message>
   <source>the table has no column '%1'; add it, or map another header onto it with a column map</source>
   <translation>la tabla no tiene la columna '%1'; añádala, o asígnele otro encabezado con un mapa de columnas</translation>
  </message>
  <message>
   <source>the igniter file has none</source>
   <translation>el archivo de inflamadores no tiene ninguno</translation>
  </message>
  <message>
   <source>name one of the igniter file: %1</source>
   <translation>nombre uno del archivo de inflamadores: %1</translation>
  </message>
  <message>
   <source>this field is beyond the last header; a separator is too many</source>
   <translation>este campo está más allá del último encabezado; sobra un separador</translation>
  </message>
  <message>
   <source>write a whole number from 1 to 9999, as 7 or %1</source>
   <translation>escriba un entero de 1 a 9999, como 7 o %1</translation>
  </message>
  <message>
   <source>name the cue that this pin fires</source>
   <translation>nombre el cue que dispara este pin</translation>
  </message>
  <message>
   <source>write how many igniters, a whole number from 0 to 999</source>
   <translation>escriba cuántos inflamadores, un entero de 0 a 999</translation>
  </message>
  <message>
   <source>write AWG24, 0.5mm2, or the name of a [wire] of the igniter file</source>
   <translation>escriba AWG24, 0.5mm2, o el nombre de un [wire] del archivo de inflamadores</translation>
  </message>
  <message>
   <source>the plan has more wire sizes than can be told apart; use fewer</source>
   <translation>el plan tiene más tamaños de hilo de los que se distinguen; use menos</translation>
  </message>
  <message>
   <source>write the one-way length in metres, from 0 to 10000, as 12.5</source>
   <translation>escriba la longitud de ida en metros, de 0 a 10000, como 12.5</translation>
  </message>
  <message>
   <source>write series or parallel</source>
   <translation>escriba series o parallel</translation>
  </message>
  <message>
   <source>write the calibre in millimetres, above 0 and up to 1000</source>
   <translation>escriba el calibre en milímetros, mayor que 0 y hasta 1000</translation>
  </message>
  <message>
   <source>no igniter is planned here, so this pin must read open</source>
   <translation>aquí no hay inflamador previsto, así que este pin debe leerse abierto</translation>
  </message>
  <message>
   <source>a lead without a wire counts as 0 ohm; name its wire</source>
   <translation>un cable sin hilo cuenta como 0 ohmios; nombre su hilo</translation>
  </message>
  <message>
   <source>a wire without a length counts as 0 ohm; give lead_m</source>
   <translation>un hilo sin longitud cuenta como 0 ohmios; dé lead_m</translation>
  </message>
  <message>
   <source>no cue has a position, so no walking order can be given</source>
   <translation>ningún cue tiene posición, así que no hay orden de recorrido</translation>
  </message>
  <message>
   <source>cue %1 has no position</source>
   <translation>el cue %1 no tiene posición</translation>
  </message>
  <message>
   <source>module %1 has %2 rails by %3</source>
   <translation>el módulo %1 tiene %2 carriles según %3</translation>
  </message>
  <message>
   <source>this rail has %1 pins by %2</source>
   <translation>este carril tiene %1 pines según %2</translation>
  </message>
  <message>
   <source>the modules have more rails or pins than a field can; state their sizes with a module file, or correct the numbers</source>
   <translation>los módulos tienen más carriles o pines de los que puede un campo; indique sus tamaños en un archivo de módulos, o corrija los números</translation>
  </message>
  <message>
   <source>give rails = [pins on rail 1, pins on rail 2, ...], each from 1 to 9999</source>
   <translation>dé rails = [pines del carril 1, pines del carril 2, ...], cada uno de 1 a 9999</translation>
  </message>
  <message>
   <source>write a table [%1]</source>
   <translation>escriba una tabla [%1]</translation>
  </message>
  <message>
   <source>name a module from 1 to 9999, as [module.7]</source>
   <translation>nombre un módulo de 1 a 9999, como [module.7]</translation>
  </message>
  <message>
   <source>this module is there twice</source>
   <translation>este módulo está dos veces</translation>
  </message>
  <message>
   <source>cannot take the module sizes</source>
   <translation>no se pueden tomar los tamaños de los módulos</translation>
  </message>
  <message>
   <source>no_fire_a is above all_fire_a; look at the data sheet again</source>
   <translation>no_fire_a supera all_fire_a; mire otra vez la hoja de datos</translation>
  </message>
  <message>
   <source>test_max_a is above no_fire_a; look at the data sheet again</source>
   <translation>test_max_a supera no_fire_a; mire otra vez la hoja de datos</translation>
  </message>
  <message>
   <source>give bridge_ohm = [least, most] in ohm</source>
   <translation>dé bridge_ohm = [mínimo, máximo] en ohmios</translation>
  </message>
  <message>
   <source>give ohm_per_km = [least, most] of one conductor</source>
   <translation>dé ohm_per_km = [mínimo, máximo] de un conductor</translation>
  </message>
  <message>
   <source>give volt = [least, most] under load</source>
   <translation>dé volt = [mínimo, máximo] con carga</translation>
  </message>
  <message>
   <source>give source_ohm of the source and its cable; 0 if none</source>
   <translation>dé source_ohm de la fuente y su cable; 0 si no hay</translation>
  </message>
  <message>
   <source>cannot take the igniter file</source>
   <translation>no se puede tomar el archivo de inflamadores</translation>
  </message>
  <message>
   <source>write a number from %1 to %2</source>
   <translation>escriba un número de %1 a %2</translation>
  </message>
  <message>
   <source>write a whole number from %1 to %2</source>
   <translation>escriba un entero de %1 a %2</translation>
  </message>
  <message>
   <source>write [least, most], least first, from %1 to %2</source>
   <translation>escriba [mínimo, máximo], el mínimo primero, de %1 a %2</translation>
  </message>
  <message>
   <source>this is no key; did you mean %1?</source>
   <translation>esto no es una clave; ¿quería decir %1?</translation>
  </message>
  <message>
   <source>the site is over 100 km across</source>
   <translation>el terreno mide más de 100 km de ancho</translation>
  </message>
  <message>
   <source>check longitude and latitude of each place</source>
   <translation>revise longitud y latitud de cada lugar</translation>
  </message>
  <message>
   <source>not a GeoJSON FeatureCollection</source>
   <translation>no es una FeatureCollection de GeoJSON</translation>
  </message>
  <message>
   <source>export the site as GeoJSON (RFC 7946)</source>
   <translation>exporte el terreno como GeoJSON (RFC 7946)</translation>
  </message>
  <message>
   <source>a position has no name</source>
   <translation>una posición no tiene nombre</translation>
  </message>
  <message>
   <source>name it as the plan does</source>
   <translation>nómbrela como en el plan</translation>
  </message>
  <message>
   <source>a ring is not closed</source>
   <translation>un anillo no está cerrado</translation>
  </message>
  <message>
   <source>end it with the place it began with</source>
   <translation>termínelo en el lugar donde empezó</translation>
  </message>
  <message>
   <source>a feature has no role</source>
   <translation>un feature no tiene función</translation>
  </message>
  <message>
   <source>write position, audience, structure, control or exclusion</source>
   <translation>escriba position, audience, structure, control o exclusion</translation>
  </message>
  <message>
   <source>the show has mistakes</source>
   <translation>el espectáculo tiene errores</translation>
  </message>
  <message>
   <source>mend them first</source>
   <translation>corríjalos primero</translation>
  </message>
  <message>
   <source>Choose a plan first</source>
   <translation>Elija primero un plan</translation>
  </message>
  <message>
   <source>%1 pins on %2 modules, %3 positions</source>
   <translation>%1 pines en %2 módulos, %3 posiciones</translation>
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
   <translation>sin puerto</translation>
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
   <source>(no plain text)</source>
   <translation>(no es texto legible)</translation>
  </message>
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
   <translation>primero: %1</translation>
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
   <translation>atrasado</translation>
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
