<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<TS version="2.1" language="en">
 <context>
  <name>FaultReadings</name>
  <message numerus="yes">
   <source>and %n more</source>
   <translation>
    <numerusform>and %n more</numerusform>
    <numerusform>and %n more</numerusform>
   </translation>
  </message>
 </context>
 <context>
  <name>Faults</name>
  <message numerus="yes">
   <source>%1 and %n more</source>
   <translation>
    <numerusform>%1 and %n more</numerusform>
    <numerusform>%1 and %n more</numerusform>
   </translation>
  </message>
 </context>
 <context>
  <name>FaultsView</name>
  <message numerus="yes">
   <source>%n to do</source>
   <translation>
    <numerusform>%n to do</numerusform>
    <numerusform>%n to do</numerusform>
   </translation>
  </message>
 </context>
 <context>
  <name>PinPage</name>
  <message numerus="yes">
   <source>%n igniter(s)</source>
   <translation>
    <numerusform>%n igniter</numerusform>
    <numerusform>%n igniters</numerusform>
   </translation>
  </message>
  <message numerus="yes">
   <source>%n pin(s) read alike: a swap among them cannot be seen by the tester.</source>
   <translation>
    <numerusform>%n pin reads alike: a swap cannot be seen by the tester.</numerusform>
    <numerusform>%n pins read alike: a swap among them cannot be seen by the tester.</numerusform>
   </translation>
  </message>
 </context>
 <context>
  <name>Strip</name>
  <message numerus="yes">
   <source>not possible: %n reason(s)</source>
   <translation>
    <numerusform>not possible: %n reason</numerusform>
    <numerusform>not possible: %n reasons</numerusform>
   </translation>
  </message>
  <message numerus="yes">
   <source>%n inside</source>
   <translation>
    <numerusform>%n inside</numerusform>
    <numerusform>%n inside</numerusform>
   </translation>
  </message>
 </context>
</TS>
