<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<TS version="2.1" language="es" sourcelanguage="en_US">
<context>
    <name>AcknowledgeCommand</name>
    <message>
        <source>acknowledging a flag</source>
        <translation>dar por visto un aviso</translation>
    </message>
    <message>
        <source>taking an acknowledgement back</source>
        <translation>retirar el visto de un aviso</translation>
    </message>
</context>
<context>
    <name>DaySheet</name>
    <message>
        <source>Day&apos;s sheet</source>
        <translation>Hoja del día</translation>
    </message>
    <message>
        <source>Address</source>
        <translation>Dirección</translation>
    </message>
    <message>
        <source>Access</source>
        <translation>Acceso</translation>
    </message>
    <message>
        <source>Contact</source>
        <translation>Contacto</translation>
    </message>
    <message>
        <source>Note</source>
        <translation>Nota</translation>
    </message>
    <message>
        <source>Some of this comes a day late.</source>
        <translation>Algo de esto llega un día tarde.</translation>
    </message>
    <message numerus="yes">
        <source>Some of this comes late, by up to %n days.</source>
        <translation>
            <numerusform>Algo de esto llega hasta %n día tarde.</numerusform>
            <numerusform>Algo de esto llega hasta %n días tarde.</numerusform>
        </translation>
    </message>
    <message>
        <source>Bring</source>
        <translation>Llevar</translation>
    </message>
    <message>
        <source>Order first</source>
        <translation>Pedir antes</translation>
    </message>
    <message>
        <source>until %1</source>
        <translation>hasta el %1</translation>
    </message>
    <message>
        <source>a day late</source>
        <translation>un día tarde</translation>
    </message>
    <message numerus="yes">
        <source>%n days late</source>
        <translation>
            <numerusform>%n día tarde</numerusform>
            <numerusform>%n días tarde</numerusform>
        </translation>
    </message>
    <message>
        <source>What and why</source>
        <translation>Qué y por qué</translation>
    </message>
    <message>
        <source>When</source>
        <translation>Cuándo</translation>
    </message>
    <message>
        <source>Needs</source>
        <translation>Necesita</translation>
    </message>
    <message>
        <source>Done</source>
        <translation>Hecho</translation>
    </message>
    <message>
        <source>Left open</source>
        <translation>Pendiente</translation>
    </message>
    <message>
        <source>The visit of %1 is not closed yet.</source>
        <translation>La visita del %1 aún no está cerrada.</translation>
    </message>
    <message>
        <source>%1: not seen on %2 (%3).</source>
        <translation>%1: sin ver el %2 (%3).</translation>
    </message>
    <message>
        <source>%1, day&apos;s sheet, %2</source>
        <translation>%1, hoja del día, %2</translation>
    </message>
    <message>
        <source>Printed %1</source>
        <translation>Impreso el %1</translation>
    </message>
    <message>
        <source>No longer made; look for one by %1.</source>
        <translation>Ya no se fabrica; busque uno antes del %1.</translation>
    </message>
    <message>
        <source>Order by %1.</source>
        <translation>Pedir a más tardar el %1.</translation>
    </message>
    <message>
        <source>How long a spare takes to come is an assumption.</source>
        <translation>Lo que tarda en llegar un repuesto es una suposición.</translation>
    </message>
</context>
<context>
    <name>FieldSheet</name>
    <message>
        <source>Grades: %1. N: not seen (say why). W wet, M damp, D dry.</source>
        <translation>Grados: %1. N: sin ver (diga por qué). M mojado, H húmedo, S seco.</translation>
    </message>
    <message>
        <source>Field sheet, %1</source>
        <translation>Hoja de campo, %1</translation>
    </message>
    <message>
        <source>Day</source>
        <translation>Día</translation>
    </message>
    <message>
        <source>Technician</source>
        <translation>Técnico</translation>
    </message>
    <message>
        <source>Weather</source>
        <translation>Tiempo</translation>
    </message>
    <message>
        <source>Unit on arrival</source>
        <translation>Unidad a la llegada</translation>
    </message>
    <message>
        <source>Place of the unit</source>
        <translation>Lugar de la unidad</translation>
    </message>
    <message>
        <source>Address</source>
        <translation>Dirección</translation>
    </message>
    <message>
        <source>Access</source>
        <translation>Acceso</translation>
    </message>
    <message>
        <source>Contact</source>
        <translation>Contacto</translation>
    </message>
    <message>
        <source>Zone</source>
        <translation>Zona</translation>
    </message>
    <message>
        <source>Last</source>
        <translation>Última</translation>
    </message>
    <message>
        <source>Today</source>
        <translation>Hoy</translation>
    </message>
    <message>
        <source>Wet?</source>
        <translation>¿Mojado?</translation>
    </message>
    <message>
        <source>Note</source>
        <translation>Nota</translation>
    </message>
    <message>
        <source>N</source>
        <comment>not seen, one letter</comment>
        <translation>N</translation>
    </message>
    <message>
        <source>never seen</source>
        <translation>nunca vista</translation>
    </message>
    <message>
        <source>W</source>
        <comment>wet, one letter</comment>
        <translation>M</translation>
    </message>
    <message>
        <source>M</source>
        <comment>damp, one letter</comment>
        <translation>H</translation>
    </message>
    <message>
        <source>D</source>
        <comment>dry, one letter</comment>
        <translation>S</translation>
    </message>
    <message>
        <source>Readings</source>
        <translation>Lecturas</translation>
    </message>
    <message>
        <source>What and where</source>
        <translation>Qué y dónde</translation>
    </message>
    <message>
        <source>Today, with its unit</source>
        <translation>Hoy, con su unidad</translation>
    </message>
    <message>
        <source>Work done, to come back for</source>
        <translation>Trabajo hecho, por lo que volver</translation>
    </message>
    <message>
        <source>%1, field sheet</source>
        <translation>%1, hoja de campo</translation>
    </message>
    <message>
        <source>Printed %1</source>
        <translation>Impreso el %1</translation>
    </message>
</context>
<context>
    <name>Language</name>
    <message>
        <source>English</source>
        <extracomment>The name of the language of this translation, as its speakers call it, without a country</extracomment>
        <translation>español</translation>
    </message>
</context>
<context>
    <name>MovedTrips</name>
    <message>
        <source>The days chosen for the trips to a site can&apos;t be read, so its trips stand as worked out.</source>
        <translation>No se pueden leer los días elegidos para los viajes a un emplazamiento, así que sus viajes quedan como se calcularon.</translation>
    </message>
</context>
<context>
    <name>OwnerHistory</name>
    <message>
        <source>%1, %2 years ago</source>
        <translation>%1, hace %2 años</translation>
    </message>
    <message>
        <source>none yet</source>
        <translation>ninguna todavía</translation>
    </message>
    <message>
        <source>%1, %2 to %3</source>
        <comment>number of visits, first day, last day</comment>
        <translation>%1, del %2 al %3</translation>
    </message>
    <message>
        <source>Owner&apos;s history</source>
        <translation>Historial del propietario</translation>
    </message>
    <message>
        <source>Installed</source>
        <translation>Instalada</translation>
    </message>
    <message>
        <source>Visits</source>
        <translation>Visitas</translation>
    </message>
    <message>
        <source>Paid for work</source>
        <translation>Pagado por trabajos</translation>
    </message>
    <message>
        <source>This unit was retired on %1.</source>
        <translation>Esta unidad se dio de baja el %1.</translation>
    </message>
    <message>
        <source>%1, owner&apos;s history, %2</source>
        <translation>%1, historial del propietario, %2</translation>
    </message>
    <message>
        <source>As of %1</source>
        <translation>A fecha de %1</translation>
    </message>
    <message>
        <source>%1 owner&apos;s history</source>
        <translation>%1 historial del propietario</translation>
    </message>
    <message>
        <source>not before %1</source>
        <translation>no antes del %1</translation>
    </message>
    <message>
        <source>from %1 on</source>
        <translation>desde el %1</translation>
    </message>
    <message>
        <source>%1 to %2</source>
        <translation>del %1 al %2</translation>
    </message>
    <message>
        <source>That it stops for want of a part: %1 within a year, %2 within five, if nothing is done. </source>
        <translation>Que se pare por falta de una pieza: %1 en un año, %2 en cinco, si no se hace nada. </translation>
    </message>
    <message>
        <source>No single assumption would turn this answer, even changed fourfold.</source>
        <translation>Ningún supuesto por sí solo cambiaría esta respuesta, ni siquiera cuadruplicado.</translation>
    </message>
    <message>
        <source>The answer would turn with any one of these: %1.</source>
        <translation>La respuesta cambiaría con cualquiera de estos: %1.</translation>
    </message>
    <message>
        <source>Carry on, a year</source>
        <translation>Continuar, al año</translation>
    </message>
    <message>
        <source>Replace, a year</source>
        <translation>Reemplazar, al año</translation>
    </message>
    <message>
        <source>What each comes to</source>
        <translation>Lo que supone cada opción</translation>
    </message>
    <message>
        <source>Expected costs of a year in the owner&apos;s own money, over the years compared: repairs, and what else is given.</source>
        <translation>Costes esperados de un año en el dinero del propietario, durante los años comparados: reparaciones y lo demás que se haya indicado.</translation>
    </message>
    <message>
        <source>What comes next</source>
        <translation>Lo que viene</translation>
    </message>
    <message>
        <source>Where and why</source>
        <translation>Dónde y por qué</translation>
    </message>
    <message>
        <source>Grade</source>
        <translation>Grado</translation>
    </message>
    <message>
        <source>Spent within a year</source>
        <translation>Agotado en un año</translation>
    </message>
    <message>
        <source>Spent between (10 % and 90 %)</source>
        <translation>Agotado entre (10 % y 90 %)</translation>
    </message>
    <message>
        <source>Nothing is likely to be spent within five years.</source>
        <translation>Es improbable que algo se agote en cinco años.</translation>
    </message>
    <message>
        <source>Carry on or replace</source>
        <translation>Continuar o reemplazar</translation>
    </message>
    <message>
        <source>Not reckoned: costs are not given. Needed: %1.</source>
        <translation>Sin calcular: no se han indicado costes. Hace falta: %1.</translation>
    </message>
    <message>
        <source>the costs of at least one part</source>
        <translation>los costes de al menos una pieza</translation>
    </message>
    <message>
        <source>Of the repairs to be expected, most is for this part: %1.</source>
        <translation>De las reparaciones previsibles, la mayor parte es para esta pieza: %1.</translation>
    </message>
    <message>
        <source>Not given, and left out: %1.</source>
        <translation>Sin indicar, y no contado: %1.</translation>
    </message>
    <message>
        <source>Failures not counted, for want of their costs: %1.</source>
        <translation>Fallos no contados, por falta de sus costes: %1.</translation>
    </message>
    <message>
        <source>The places likeliest to be spent, through the years</source>
        <translation>Los lugares con más probabilidad de agotarse, a lo largo de los años</translation>
    </message>
    <message>
        <source>The unit, opened</source>
        <translation>La unidad, abierta</translation>
    </message>
    <message>
        <source>Each part with the worst grade last found on it: 1 sound, 2 worn, 3 marked, 4 poor, 5 spent; hatched where it could not be seen.</source>
        <translation>Cada pieza con el peor grado hallado la última vez: 1 sano, 2 gastado, 3 marcado, 4 deficiente, 5 agotado; rayado donde no se pudo ver.</translation>
    </message>
    <message>
        <source>Through the years</source>
        <translation>A lo largo de los años</translation>
    </message>
    <message>
        <source>%1 and %2 more</source>
        <comment>names, number</comment>
        <translation>%1 y %2 más</translation>
    </message>
    <message>
        <source>%1 %2 → %3</source>
        <comment>zone, grade before, grade found</comment>
        <translation>%1 %2 → %3</translation>
    </message>
    <message>
        <source>%1: %2.</source>
        <comment>what was done, where</comment>
        <translation>%1: %2.</translation>
    </message>
    <message>
        <source>New: %1.</source>
        <translation>Nuevo: %1.</translation>
    </message>
    <message>
        <source>%1 put in: %2.</source>
        <comment>refrigerant, mass</comment>
        <translation>%1 añadido: %2.</translation>
    </message>
    <message>
        <source>%1 %2</source>
        <comment>reason, day</comment>
        <translation>%1 %2</translation>
    </message>
    <message>
        <source>Year by year</source>
        <translation>Año por año</translation>
    </message>
    <message>
        <source>Year</source>
        <translation>Año</translation>
    </message>
    <message>
        <source>What was done</source>
        <translation>Qué se hizo</translation>
    </message>
    <message>
        <source>Got worse</source>
        <translation>Empeoró</translation>
    </message>
    <message>
        <source>Paid</source>
        <translation>Pagado</translation>
    </message>
    <message>
        <source>Looked at.</source>
        <translation>Revisada.</translation>
    </message>
    <message>
        <source>Paid for work in all: %1, in the owner&apos;s own money, where a cost was written down.</source>
        <translation>Pagado por trabajos en total: %1, en el dinero del propietario, donde se anotó un coste.</translation>
    </message>
    <message>
        <source>Where it stands</source>
        <translation>Dónde está</translation>
    </message>
</context>
<context>
    <name>Paper</name>
    <message>
        <source>Page %1 of %2</source>
        <translation>Página %1 de %2</translation>
    </message>
    <message>
        <source>The picture can&apos;t be read.</source>
        <translation>No se puede leer la imagen.</translation>
    </message>
    <message>
        <source>continued</source>
        <translation>continúa</translation>
    </message>
</context>
<context>
    <name>RatesWords</name>
    <message>
        <source>They last longer here than we assumed.</source>
        <translation>Aquí duran más de lo que suponíamos.</translation>
    </message>
    <message>
        <source>They are spent sooner here than we assumed.</source>
        <translation>Aquí se agotan antes de lo que suponíamos.</translation>
    </message>
    <message>
        <source>They last about as long here as we assumed.</source>
        <translation>Aquí duran más o menos lo que suponíamos.</translation>
    </message>
    <message>
        <source>%1 (dirt)</source>
        <translation>%1 (suciedad)</translation>
    </message>
    <message>
        <source>%1 %</source>
        <translation>%1 %</translation>
    </message>
    <message>
        <source>%1: forecasts use %2 years, learned on %3; ours are %4 years.</source>
        <translation>%1: los pronósticos usan %2 años, aprendidos el %3; los nuestros son %4 años.</translation>
    </message>
    <message>
        <source>%1: forecasts use our %2 years from sound to spent (the middle one of many).</source>
        <translation>%1: los pronósticos usan nuestros %2 años de sano a agotado (el del medio entre muchos).</translation>
    </message>
    <message>
        <source>Your records, %1 zones with %2 grades seen, say %3 years, give or take: %4 to %5.</source>
        <translation>Sus registros, %1 zonas con %2 grados vistos, dicen %3 años, más o menos: de %4 a %5.</translation>
    </message>
    <message>
        <source>%1 of what is known of it comes from your records, the rest is our assumption.</source>
        <translation>El %1 de lo que se sabe viene de sus registros; el resto es suposición nuestra.</translation>
    </message>
    <message>
        <source>Of %1 zones, some were left out evenly to save time.</source>
        <translation>De %1 zonas, algunas se dejaron fuera por igual para ahorrar tiempo.</translation>
    </message>
</context>
<context>
    <name>SeasonPage</name>
    <message>
        <source>Day&apos;s sheet</source>
        <translation>Hoja del día</translation>
    </message>
    <message>
        <source>%1 field sheet</source>
        <translation>%1 hoja de campo</translation>
    </message>
    <message>
        <source>Field sheet</source>
        <translation>Hoja de campo</translation>
    </message>
</context>
<context>
    <name>SetupLog</name>
    <message>
        <source>adding %1</source>
        <translation>añadir %1</translation>
    </message>
    <message numerus="yes">
        <source>adding %n units</source>
        <translation>
            <numerusform>añadir %n unidad</numerusform>
            <numerusform>añadir %n unidades</numerusform>
        </translation>
    </message>
    <message>
        <source>changing %1</source>
        <translation>cambiar %1</translation>
    </message>
    <message>
        <source>Retired %1: %2</source>
        <translation>Retirada el %1: %2</translation>
    </message>
    <message>
        <source>retiring %1</source>
        <translation>retirar %1</translation>
    </message>
    <message>
        <source>Brought back %1</source>
        <translation>Puesta de nuevo en servicio el %1</translation>
    </message>
    <message>
        <source>bringing back %1</source>
        <translation>recuperar %1</translation>
    </message>
    <message>
        <source>removing %1</source>
        <translation>quitar %1</translation>
    </message>
</context>
<context>
    <name>Visit</name>
    <message>
        <source>not seen: %1</source>
        <translation>sin ver: %1</translation>
    </message>
    <message>
        <source>conditions</source>
        <translation>condiciones</translation>
    </message>
    <message>
        <source>technician</source>
        <translation>técnico</translation>
    </message>
    <message>
        <source>reason of the visit</source>
        <translation>motivo de la visita</translation>
    </message>
    <message>
        <source>note on the visit</source>
        <translation>nota sobre la visita</translation>
    </message>
    <message>
        <source>removal of %1</source>
        <translation>retirada de %1</translation>
    </message>
    <message>
        <source>note on %1</source>
        <translation>nota sobre %1</translation>
    </message>
    <message>
        <source>promise to look again</source>
        <translation>promesa de volver a mirar</translation>
    </message>
    <message>
        <source>photo</source>
        <translation>foto</translation>
    </message>
    <message>
        <source>new part for %1</source>
        <translation>pieza nueva para %1</translation>
    </message>
    <message>
        <source>a zone</source>
        <translation>una zona</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <comment>part: zone</comment>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>refrigerant %1</source>
        <comment>refrigerant added</comment>
        <translation>refrigerante %1</translation>
    </message>
    <message>
        <source>grade %1 on %2</source>
        <translation>grado %1 en %2</translation>
    </message>
    <message>
        <source>“not seen” on %1</source>
        <translation>«sin ver» en %1</translation>
    </message>
    <message>
        <source>“%1” on %2</source>
        <translation>«%1» en %2</translation>
    </message>
    <message>
        <source>where a photo belongs</source>
        <translation>lugar de una foto</translation>
    </message>
</context>
<context>
    <name>VisitSummary</name>
    <message>
        <source>%1 %2 visit summary</source>
        <translation>%1 %2 resumen de la visita</translation>
    </message>
    <message>
        <source>Worse since %1</source>
        <translation>Peor desde el %1</translation>
    </message>
    <message>
        <source>Better than on %1 without work: one of the two grades is doubtful</source>
        <translation>Mejor que el %1 sin trabajo de por medio: uno de los dos grados es dudoso</translation>
    </message>
    <message>
        <source>Better after today&apos;s work</source>
        <translation>Mejor tras el trabajo de hoy</translation>
    </message>
    <message>
        <source>Better after work, since %1</source>
        <translation>Mejor tras un trabajo, desde el %1</translation>
    </message>
    <message>
        <source>Seen for the first time</source>
        <translation>Se ve por primera vez</translation>
    </message>
    <message>
        <source>Unchanged since %1</source>
        <translation>Sin cambios desde el %1</translation>
    </message>
    <message>
        <source>Never seen so far</source>
        <translation>Nunca se ha visto hasta ahora</translation>
    </message>
    <message>
        <source>Last seen on %1</source>
        <translation>Se vio por última vez el %1</translation>
    </message>
    <message>
        <source>Not seen: %1</source>
        <translation>Sin ver: %1</translation>
    </message>
    <message>
        <source>Not seen</source>
        <translation>Sin ver</translation>
    </message>
    <message>
        <source> “%1”</source>
        <comment>a note, quoted</comment>
        <translation> «%1»</translation>
    </message>
    <message>
        <source>Zones unchanged and sound or worn (grade 1 or 2): %1.</source>
        <translation>Zonas sin cambios, en grado sano o usado (1 o 2): %1.</translation>
    </message>
    <message>
        <source>Zones seen for the first time, sound or worn: %1.</source>
        <translation>Zonas vistas por primera vez, en grado sano o usado: %1.</translation>
    </message>
    <message>
        <source>Unchanged at grade 3, marked: %1.</source>
        <translation>Sin cambios en grado 3, marcado: %1.</translation>
    </message>
    <message>
        <source>Not seen for lack of time, sound or worn before: %1.</source>
        <translation>Sin ver por falta de tiempo, antes en grado sano o usado: %1.</translation>
    </message>
    <message>
        <source>Zones not looked at this time: %1.</source>
        <translation>Zonas que esta vez no se miraron: %1.</translation>
    </message>
    <message>
        <source>What changed</source>
        <translation>Qué ha cambiado</translation>
    </message>
    <message>
        <source>Zone</source>
        <translation>Zona</translation>
    </message>
    <message>
        <source>Then, now</source>
        <translation>Antes, ahora</translation>
    </message>
    <message>
        <source>What it looks like</source>
        <translation>Qué aspecto tiene</translation>
    </message>
    <message>
        <source>No zone was graded at this visit.</source>
        <translation>En esta visita no se dio grado a ninguna zona.</translation>
    </message>
    <message>
        <source>Flags</source>
        <translation>Avisos</translation>
    </message>
    <message>
        <source>Not seen for long: %1.</source>
        <translation>Sin ver desde hace mucho: %1.</translation>
    </message>
    <message>
        <source>More flags in the record, on these zones or less pressing: %1.</source>
        <translation>Más avisos en el registro, sobre estas zonas o menos urgentes: %1.</translation>
    </message>
    <message>
        <source>Overdue since %1</source>
        <translation>Vencida desde el %1</translation>
    </message>
    <message>
        <source>%1 to %2</source>
        <translation>del %1 al %2</translation>
    </message>
    <message>
        <source>Next checks</source>
        <translation>Próximas revisiones</translation>
    </message>
    <message>
        <source>What and why</source>
        <translation>Qué y por qué</translation>
    </message>
    <message>
        <source>When</source>
        <translation>Cuándo</translation>
    </message>
    <message>
        <source>Later checks in the record: %1.</source>
        <translation>Revisiones posteriores en el registro: %1.</translation>
    </message>
    <message>
        <source>As found</source>
        <translation>Al llegar</translation>
    </message>
    <message>
        <source>As left</source>
        <translation>Al irse</translation>
    </message>
    <message>
        <source>Today</source>
        <translation>Hoy</translation>
    </message>
    <message>
        <source>Last time</source>
        <translation>La última vez</translation>
    </message>
    <message>
        <source>Photographs</source>
        <translation>Fotografías</translation>
    </message>
    <message>
        <source>More of this visit in the record: %1</source>
        <translation>Más fotografías de esta visita en el registro: %1</translation>
    </message>
    <message>
        <source>%1 % humidity</source>
        <translation>%1 % de humedad</translation>
    </message>
    <message>
        <source>Visit summary</source>
        <translation>Resumen de la visita</translation>
    </message>
    <message>
        <source>Visit</source>
        <translation>Visita</translation>
    </message>
    <message>
        <source>%1, %2</source>
        <translation>%1, %2</translation>
    </message>
    <message>
        <source>Technician</source>
        <translation>Técnico</translation>
    </message>
    <message>
        <source>Weather</source>
        <translation>Tiempo</translation>
    </message>
    <message>
        <source>Unit on arrival</source>
        <translation>Unidad a la llegada</translation>
    </message>
    <message>
        <source>Address</source>
        <translation>Dirección</translation>
    </message>
    <message>
        <source>Place of the unit</source>
        <translation>Lugar de la unidad</translation>
    </message>
    <message>
        <source>Installed</source>
        <translation>Instalada</translation>
    </message>
    <message>
        <source>Keep the unit off and dry until %1.</source>
        <translation>Mantenga la unidad apagada y seca hasta %1.</translation>
    </message>
    <message>
        <source>This visit is still open: the summary may change.</source>
        <translation>Esta visita sigue abierta: el resumen puede cambiar.</translation>
    </message>
    <message>
        <source>%1 (typed: %2)</source>
        <translation>%1 (escrito: %2)</translation>
    </message>
    <message>
        <source>Readings</source>
        <translation>Lecturas</translation>
    </message>
    <message>
        <source>Reading</source>
        <translation>Lectura</translation>
    </message>
    <message>
        <source>%1 on %2</source>
        <translation>%1 el %2</translation>
    </message>
    <message>
        <source>Work done</source>
        <translation>Trabajo realizado</translation>
    </message>
    <message>
        <source>Where</source>
        <translation>Dónde</translation>
    </message>
    <message>
        <source>Found, left</source>
        <translation>Antes, después</translation>
    </message>
    <message>
        <source>What</source>
        <translation>Qué</translation>
    </message>
    <message>
        <source>Keep off and dry until %1.</source>
        <translation>Mantener apagada y en seco hasta %1.</translation>
    </message>
    <message>
        <source>New part fitted.</source>
        <translation>Se montó una pieza nueva.</translation>
    </message>
    <message>
        <source>Refrigerant</source>
        <translation>Refrigerante</translation>
    </message>
    <message>
        <source>Entry</source>
        <translation>Anotación</translation>
    </message>
    <message>
        <source>Mass</source>
        <translation>Masa</translation>
    </message>
    <message>
        <source>Cylinder, reason</source>
        <translation>Cilindro, motivo</translation>
    </message>
    <message>
        <source>Note</source>
        <translation>Nota</translation>
    </message>
    <message>
        <source>Customer</source>
        <translation>Cliente</translation>
    </message>
    <message>
        <source>Date</source>
        <translation>Fecha</translation>
    </message>
    <message>
        <source>%1, visit summary, %2</source>
        <translation>%1, resumen de la visita, %2</translation>
    </message>
    <message>
        <source>Printed %1</source>
        <translation>Impreso el %1</translation>
    </message>
    <message>
        <source>Cleared by: %1</source>
        <translation>Se resuelve así: %1</translation>
    </message>
    <message>
        <source>Cautions</source>
        <translation>Precauciones</translation>
    </message>
    <message>
        <source>For all of this: %1</source>
        <translation>Para todo lo anterior: %1</translation>
    </message>
    <message>
        <source>Grades, limits and dates are advice: local codes, the maker&apos;s instructions and a licensed technician come first.</source>
        <translation>Los grados, límites y fechas son orientativos: mandan las normas locales, las instrucciones del fabricante y un técnico autorizado.</translation>
    </message>
    <message>
        <source>serial %1</source>
        <translation>n.º de serie %1</translation>
    </message>
    <message>
        <source>charge %1</source>
        <translation>carga %1</translation>
    </message>
    <message>
        <source>May point to</source>
        <translation>Puede indicar</translation>
    </message>
    <message>
        <source>%1. What would decide: %2</source>
        <translation>%1. Qué lo decidiría: %2</translation>
    </message>
    <message>
        <source>A hint from common practice, not a verdict.</source>
        <translation>Un indicio de la práctica común, no un veredicto.</translation>
    </message>
    <message>
        <source>What the readings mean</source>
        <translation>Qué dicen las lecturas</translation>
    </message>
    <message>
        <source>Other readings, as asked for: %1.</source>
        <translation>Otras lecturas, como se pide: %1.</translation>
    </message>
    <message>
        <source>now</source>
        <translation>ahora</translation>
    </message>
    <message>
        <source>far ahead</source>
        <translation>muy lejano</translation>
    </message>
    <message>
        <source>%1 or later</source>
        <comment>a year</comment>
        <translation>%1 o después</translation>
    </message>
    <message>
        <source>in %1</source>
        <comment>a year</comment>
        <translation>en %1</translation>
    </message>
    <message>
        <source>%1 to %2</source>
        <comment>years</comment>
        <translation>%1 a %2</translation>
    </message>
    <message>
        <source>What to expect</source>
        <translation>Qué cabe esperar</translation>
    </message>
    <message>
        <source>No part is likely to give out within a year: for each the chance is below %1.</source>
        <translation>No es probable que ninguna pieza falle en un año: para cada una la probabilidad es inferior al %1.</translation>
    </message>
    <message>
        <source>Likeliest to give out first, with the chance of it within a year. The darker the strip, the likelier it has happened by then; the line marks an even chance. Ranges drawn from what was seen and measured, no promise.</source>
        <translation>Lo que antes puede fallar, con su probabilidad en un año. Cuanto más oscura la franja, más probable que ya haya ocurrido; la línea marca la mitad de las probabilidades. Intervalos deducidos de lo visto y medido, no una promesa.</translation>
    </message>
    <message>
        <source>Sound before, worn now: %1.</source>
        <translation>Antes sanas, ahora usadas: %1.</translation>
    </message>
    <message>
        <source>Unchanged, and flagged above: %1.</source>
        <translation>Sin cambios y con aviso más arriba: %1.</translation>
    </message>
    <message>
        <source>Unless said otherwise, a flag is cleared by: %1</source>
        <translation>Salvo que se diga otra cosa, un aviso se resuelve así: %1</translation>
    </message>
</context>
<context>
    <name>catalogue</name>
    <message>
        <source>A zone not seen for longer than this is flagged; what was last known of it is too old to rely on.</source>
        <translation>Una zona sin ver durante más tiempo que este recibe un aviso; lo último que se supo de ella es demasiado viejo para fiarse.</translation>
    </message>
    <message>
        <source>ours; common practice, no source</source>
        <translation>valor nuestro; práctica común, sin fuente</translation>
    </message>
    <message>
        <source>Shorter stretches between sightings say nothing about how fast a zone gets worse.</source>
        <translation>Plazos más cortos entre dos observaciones no dicen nada sobre la rapidez con que empeora una zona.</translation>
    </message>
    <message>
        <source>A zone gets worse faster when its last step took this many times less time per grade than the step before.</source>
        <translation>Una zona empeora más deprisa cuando su último paso tardó, por grado, este número de veces menos que el anterior.</translation>
    </message>
    <message>
        <source>ours; like-season visit once a year: common practice, no source</source>
        <translation>valor nuestro; visita en la misma temporada una vez al año: práctica común, sin fuente</translation>
    </message>
    <message>
        <source>common practice, no source</source>
        <translation>práctica común, sin fuente</translation>
    </message>
    <message>
        <source>A spent zone is dealt with within this time.</source>
        <translation>Una zona en grado agotado se atiende dentro de este plazo.</translation>
    </message>
    <message>
        <source>No zone waits longer than this to be looked at again, whatever its grade.</source>
        <translation>Ninguna zona espera más que esto para volver a mirarse, sea cual sea su grado.</translation>
    </message>
    <message>
        <source>A zone that was wet when it was looked at is to be seen dry within this time.</source>
        <translation>Una zona que estaba mojada al mirarla ha de verse seca dentro de este plazo.</translation>
    </message>
    <message>
        <source>Looking again counts from this share of the time between the last sighting and the latest date; a wide window makes fewer trips.</source>
        <translation>Volver a mirar cuenta a partir de esta parte del tiempo entre la última observación y la fecha límite; un margen ancho ahorra viajes.</translation>
    </message>
    <message>
        <source>Every grade, limit, date and forecast here is advice: local codes, the maker&apos;s instructions and a licensed technician come first.</source>
        <translation>Todo grado, límite, fecha y pronóstico es orientativo: mandan las normas locales, las instrucciones del fabricante y un técnico autorizado.</translation>
    </message>
    <message>
        <source>Before a panel is opened: power off at the disconnect and at the breaker, locked, tagged and proved dead; more than one supply may feed the unit. Follow local codes and the maker&apos;s instructions; licensed work only.</source>
        <translation>Antes de abrir un panel: corte la corriente en el seccionador y en el interruptor, con bloqueo, etiqueta y comprobación de ausencia de tensión; puede haber más de una alimentación. Siga las normas locales y las instrucciones del fabricante; trabajo solo para profesionales autorizados.</translation>
    </message>
    <message>
        <source>Capacitors hold a charge after the power is off; someone qualified discharges them with the proper tool and proves it before anything is touched. Follow local codes and the maker&apos;s instructions; licensed work only.</source>
        <translation>Los capacitores conservan carga después de cortar la corriente; una persona competente los descarga con la herramienta adecuada y lo comprueba antes de tocar nada. Siga las normas locales y las instrucciones del fabricante; trabajo solo para profesionales autorizados.</translation>
    </message>
    <message>
        <source>Some units warm the compressor through its winding while they seem to be off: a leg then stays live until all power is locked off and proved dead. Follow local codes and the maker&apos;s instructions; licensed work only.</source>
        <translation>Algunas unidades calientan el compresor por su devanado cuando parecen apagadas: una fase sigue con tensión hasta que todo esté bloqueado y comprobado. Siga las normas locales y las instrucciones del fabricante; trabajo solo para profesionales autorizados.</translation>
    </message>
    <message>
        <source>Fans start by themselves: keep hands, sleeves and tools out, and the guard on before power comes back. Follow local codes and the maker&apos;s instructions.</source>
        <translation>Los ventiladores arrancan solos: mantenga fuera manos, mangas y herramientas, y ponga la rejilla antes de devolver la corriente. Siga las normas locales y las instrucciones del fabricante.</translation>
    </message>
    <message>
        <source>A compressor terminal can burst out with burning oil and refrigerant: never power the unit with the terminal cover off, stand aside, and have a tripped breaker tested before it is reset. Follow local codes and the maker&apos;s instructions; licensed work only.</source>
        <translation>Un borne del compresor puede salir despedido con aceite y refrigerante ardiendo: no dé nunca corriente sin la tapa de bornes, apártese y haga comprobar un interruptor disparado antes de rearmarlo. Siga las normas locales y las instrucciones del fabricante; trabajo solo para profesionales autorizados.</translation>
    </message>
    <message>
        <source>A rusted or pitted vessel or tube is under pressure and its strength is unknown: while it holds charge do not hammer, heat, scrape or wire-brush it to metal; the refrigerant is recovered first. Follow local codes and the maker&apos;s instructions; licensed work only.</source>
        <translation>Un recipiente o tubo oxidado o picado está a presión y su resistencia es desconocida: mientras tenga carga no lo golpee, caliente, rasque ni cepille hasta el metal; antes se recupera el refrigerante. Siga las normas locales y las instrucciones del fabricante; trabajo solo para profesionales autorizados.</translation>
    </message>
    <message>
        <source>Refrigerant is recovered, never vented, and handled only by certified people; it burns cold, drives out air in closed rooms and makes acid in a flame. Follow local codes and the maker&apos;s instructions; licensed work only.</source>
        <translation>El refrigerante se recupera, nunca se libera, y solo lo manejan personas certificadas; quema de frío, desplaza el aire en locales cerrados y forma ácido en una llama. Siga las normas locales y las instrucciones del fabricante; trabajo solo para profesionales autorizados.</translation>
    </message>
    <message>
        <source>Flammable refrigerants (A2L, A3) need tools made for them, fresh air and no flame or spark anywhere near; they are never put into a unit not listed for them. Follow local codes and the maker&apos;s instructions; licensed work only.</source>
        <translation>Los refrigerantes inflamables (A2L, A3) exigen herramientas hechas para ellos, aire fresco y ninguna llama ni chispa cerca; nunca se cargan en una unidad no prevista para ellos. Siga las normas locales y las instrucciones del fabricante; trabajo solo para profesionales autorizados.</translation>
    </message>
    <message>
        <source>Brazing is done only on an open circuit that is empty of refrigerant and purged with nitrogen, with an extinguisher and a fire watch. Follow local codes and the maker&apos;s instructions; licensed work only.</source>
        <translation>Solo se suelda en un circuito abierto, vacío de refrigerante y purgado con nitrógeno, con extintor y vigilancia contra incendios. Siga las normas locales y las instrucciones del fabricante; trabajo solo para profesionales autorizados.</translation>
    </message>
    <message>
        <source>A circuit is pressure-tested with nitrogen through a regulator, never with oxygen or air. Follow local codes and the maker&apos;s instructions; licensed work only.</source>
        <translation>Un circuito se prueba a presión con nitrógeno y regulador, nunca con oxígeno ni aire. Siga las normas locales y las instrucciones del fabricante; trabajo solo para profesionales autorizados.</translation>
    </message>
    <message>
        <source>On roofs and ladders: three points of contact, tied off, protected at open edges, and no work in lightning, ice or great heat. Follow local codes and the maker&apos;s instructions.</source>
        <translation>En tejados y escaleras: tres puntos de apoyo, amarrado, protegido en los bordes, y nada de trabajo con rayos, hielo o mucho calor. Siga las normas locales y las instrucciones del fabricante.</translation>
    </message>
    <message>
        <source>Cleaners, rust treatments, solvents and wet coatings harm eyes and lungs and may burn: wear protection, keep air moving, keep them off bare joints, out of drains and away from animals, and keep the unit off until they have cured. Follow local codes and the maker&apos;s instructions.</source>
        <translation>Los limpiadores, tratamientos de óxido, disolventes y recubrimientos frescos dañan ojos y pulmones y pueden arder: use protección, mueva el aire, no moje con ellos juntas desnudas, desagües ni animales, y deje la unidad apagada hasta que curen. Siga las normas locales y las instrucciones del fabricante.</translation>
    </message>
    <message>
        <source>Fins and sheet edges cut, and the discharge line and muffler burn, also some time after the unit has stopped. Follow local codes and the maker&apos;s instructions.</source>
        <translation>Las aletas y los bordes de chapa cortan; la línea de descarga y el silenciador queman, también un rato después de parar. Siga las normas locales y las instrucciones del fabricante.</translation>
    </message>
    <message>
        <source>Look for wasps, snakes and dogs before reaching in; leave and come back rather than work beside them. Follow local codes and the maker&apos;s instructions.</source>
        <translation>Busque avispas, serpientes y perros antes de meter la mano; mejor irse y volver que trabajar junto a ellos. Siga las normas locales y las instrucciones del fabricante.</translation>
    </message>
    <message>
        <source>For the owner: keep the unit clear, leave its panels shut, pour no hot water on ice, do not wrap a heat pump for winter, and call if it hums without starting or smells burnt. Follow local codes and the maker&apos;s instructions; licensed work only.</source>
        <translation>Para el propietario: mantenga despejada la unidad, no abra los paneles, no eche agua caliente al hielo, no cubra una bomba de calor en invierno y llame si zumba sin arrancar o huele a quemado. Siga las normas locales y las instrucciones del fabricante; trabajo solo para profesionales autorizados.</translation>
    </message>
    <message>
        <source>A reading outside its limit is a reason to look closer, not yet a fault: the value, the limit, its source and who decided stand together. Follow local codes and the maker&apos;s instructions; licensed work only.</source>
        <translation>Una lectura fuera de su límite es motivo para mirar mejor, todavía no un fallo: el valor, el límite, su fuente y quién decidió van juntos. Siga las normas locales y las instrucciones del fabricante; trabajo solo para profesionales autorizados.</translation>
    </message>
    <message>
        <source>factory charge</source>
        <translation>carga de fábrica</translation>
    </message>
    <message>
        <source>compressor rated load current</source>
        <translation>corriente nominal de carga del compresor (RLA)</translation>
    </message>
    <message>
        <source>compressor locked rotor current</source>
        <translation>corriente de rotor bloqueado del compresor (LRA)</translation>
    </message>
    <message>
        <source>fan motor full load current</source>
        <translation>corriente a plena carga del motor del ventilador (FLA)</translation>
    </message>
    <message>
        <source>minimum circuit ampacity</source>
        <translation>capacidad mínima del circuito</translation>
    </message>
    <message>
        <source>maximum breaker or fuse size</source>
        <translation>tamaño máximo del interruptor o fusible</translation>
    </message>
    <message>
        <source>supply voltage</source>
        <translation>tensión de alimentación</translation>
    </message>
    <message>
        <source>capacitor, compressor section</source>
        <translation>capacitor, sección del compresor</translation>
    </message>
    <message>
        <source>capacitor, fan section</source>
        <translation>capacitor, sección del ventilador</translation>
    </message>
    <message>
        <source>rated cooling</source>
        <translation>potencia frigorífica nominal</translation>
    </message>
    <message>
        <source>rated heating</source>
        <translation>potencia calorífica nominal</translation>
    </message>
    <message>
        <source>subcooling asked for</source>
        <translation>subenfriamiento pedido</translation>
    </message>
    <message>
        <source>superheat asked for</source>
        <translation>recalentamiento pedido</translation>
    </message>
    <message>
        <source>design pressure, high side</source>
        <translation>presión de diseño, lado de alta</translation>
    </message>
    <message>
        <source>design pressure, low side</source>
        <translation>presión de diseño, lado de baja</translation>
    </message>
    <message>
        <source>highest external static pressure</source>
        <translation>presión estática externa máxima</translation>
    </message>
    <message>
        <source>smallest vessel wall the maker allows</source>
        <translation>pared mínima del recipiente según el fabricante</translation>
    </message>
    <message>
        <source>Fins</source>
        <translation>Aletas</translation>
    </message>
    <message>
        <source>faces (bent or eaten away)</source>
        <translation>caras (dobladas o comidas)</translation>
    </message>
    <message>
        <source>Fins are straight and whole: at most 2 % of the faces is bent, none is eaten away.</source>
        <translation>Las aletas están rectas y enteras: como mucho el 2 % de las caras está doblado, nada está comido.</translation>
    </message>
    <message>
        <source>At most 10 % is bent flat; the edges may be dull but do not crumble.</source>
        <translation>Como mucho el 10 % está aplastado; los bordes pueden estar apagados pero no se desmenuzan.</translation>
    </message>
    <message>
        <source>Up to 30 % is bent, or white powder shows and up to 10 % crumbles when touched.</source>
        <translation>Hasta el 30 % está doblado, o aparece polvo blanco y hasta el 10 % se desmenuza al tocarlo.</translation>
    </message>
    <message>
        <source>More than 30 % is bent, or up to 30 % has crumbled away.</source>
        <translation>Más del 30 % está doblado, o hasta el 30 % se ha desmenuzado.</translation>
    </message>
    <message>
        <source>More than 30 % has crumbled away: tubes stand bare.</source>
        <translation>Más del 30 % se ha desmenuzado: los tubos quedan al descubierto.</translation>
    </message>
    <message>
        <source>Estimate what share of each face is bent, and comb it if more than a tenth is.</source>
        <translation>Estime qué parte de cada cara está doblada y péinela si pasa de la décima parte.</translation>
    </message>
    <message>
        <source>Look for damage by ice, trimmers and animals, and for white powder.</source>
        <translation>Busque daños de hielo, cortabordes y animales, y polvo blanco.</translation>
    </message>
    <message>
        <source>hail or knocks</source>
        <translation>granizo o golpes</translation>
    </message>
    <message>
        <source>trimmed grass thrown at them</source>
        <translation>hierba cortada lanzada contra ellas</translation>
    </message>
    <message>
        <source>eaten away by salt</source>
        <translation>comidas por la sal</translation>
    </message>
    <message>
        <source>animal urine</source>
        <translation>orina de animales</translation>
    </message>
    <message>
        <source>Guards, rinsing, and distance from dryer vents and animals.</source>
        <translation>Protecciones, enjuague y distancia a salidas de secadora y animales.</translation>
    </message>
    <message>
        <source>common practice, no source; 10 to 20 years</source>
        <translation>práctica común, sin fuente; de 10 a 20 años</translation>
    </message>
    <message>
        <source>Fan motor</source>
        <translation>Motor del ventilador</translation>
    </message>
    <message>
        <source>shaft and bearings</source>
        <translation>eje y cojinetes</translation>
    </message>
    <message>
        <source>body, leads and mount</source>
        <translation>cuerpo, cables y soporte</translation>
    </message>
    <message>
        <source>Paint is whole, weep holes are open and face down, leads are clear of the blade, bolts tight.</source>
        <translation>La pintura está entera, los orificios de drenaje abiertos y hacia abajo, los cables lejos de las aspas, los tornillos apretados.</translation>
    </message>
    <message>
        <source>A few rust spots (at most 1 % of the body); leads faded but clear and soft.</source>
        <translation>Unos puntos de óxido (como mucho el 1 % del cuerpo); cables descoloridos pero libres y flexibles.</translation>
    </message>
    <message>
        <source>Rust on up to 10 % of the body, a blocked weep hole, or a lead that touches something.</source>
        <translation>Óxido en hasta el 10 % del cuerpo, un orificio de drenaje tapado o un cable que roza algo.</translation>
    </message>
    <message>
        <source>Rust on up to 33 %, brittle or chafed leads, or a loose mount.</source>
        <translation>Óxido en hasta el 33 %, cables quebradizos o rozados, o un soporte flojo.</translation>
    </message>
    <message>
        <source>A lead is worn to the wire or burnt, the mount is broken, or rust has opened the body.</source>
        <translation>Un cable gastado hasta el conductor o quemado, el soporte roto, o el óxido ha abierto el cuerpo.</translation>
    </message>
    <message>
        <source>Spins free and runs down slowly and quietly; no play can be felt at the shaft.</source>
        <translation>Gira libre y se para despacio y en silencio; no se nota juego en el eje.</translation>
    </message>
    <message>
        <source>A faint tick or hum; spins free, no play.</source>
        <translation>Un leve chasquido o zumbido; gira libre, sin juego.</translation>
    </message>
    <message>
        <source>Runs down quickly, hums loudly, or a little play can be felt at the shaft.</source>
        <translation>Se para pronto, zumba fuerte o se nota algo de juego en el eje.</translation>
    </message>
    <message>
        <source>Grinds, squeals or wobbles, runs hotter than last time, or draws more than its nameplate current.</source>
        <translation>Rasca, chirría o cabecea, va más caliente que la última vez o consume más corriente que la de su placa.</translation>
    </message>
    <message>
        <source>Seized, does not start by itself, or trips on heat.</source>
        <translation>Agarrotado, no arranca solo o se dispara por calor.</translation>
    </message>
    <message>
        <source>Measure the fan current and hold it against the nameplate.</source>
        <translation>Mida la corriente del ventilador y compárela con la placa.</translation>
    </message>
    <message>
        <source>With the power locked off, turn the fan by hand and feel for play and grinding.</source>
        <translation>Con la corriente bloqueada, gire el ventilador a mano y busque juego y roces.</translation>
    </message>
    <message>
        <source>Measure the fan current again and listen from outside the guard.</source>
        <translation>Vuelva a medir la corriente del ventilador y escuche desde fuera de la rejilla.</translation>
    </message>
    <message>
        <source>With the power locked off and the motor cold, turn the fan by hand.</source>
        <translation>Con la corriente bloqueada y el motor frío, gire el ventilador a mano.</translation>
    </message>
    <message>
        <source>dry bearings</source>
        <translation>cojinetes secos</translation>
    </message>
    <message>
        <source>seized</source>
        <translation>agarrotado</translation>
    </message>
    <message>
        <source>open winding</source>
        <translation>devanado abierto</translation>
    </message>
    <message>
        <source>wet winding</source>
        <translation>devanado mojado</translation>
    </message>
    <message>
        <source>failed through a bad capacitor</source>
        <translation>averiado por un capacitor malo</translation>
    </message>
    <message>
        <source>A shaft cap and rain shield, the right capacitor, and oil only where ports are fitted.</source>
        <translation>Una caperuza de eje y un resguardo de lluvia, el capacitor correcto, y aceite solo donde haya engrasadores.</translation>
    </message>
    <message>
        <source>common practice, no source, for a motor outdoors; ASHRAE&apos;s public summary gives 18 for electric motors</source>
        <translation>práctica común, sin fuente, para un motor a la intemperie; el resumen público de ASHRAE da 18 para motores eléctricos</translation>
    </message>
    <message>
        <source>Fan blade</source>
        <translation>Ventilador (aspas)</translation>
    </message>
    <message>
        <source>blades and roots</source>
        <translation>aspas y raíces</translation>
    </message>
    <message>
        <source>hub and set screw</source>
        <translation>cubo y prisionero</translation>
    </message>
    <message>
        <source>The hub is tight on the shaft and free of rust.</source>
        <translation>El cubo está firme en el eje y sin óxido.</translation>
    </message>
    <message>
        <source>Light surface rust at the set screw; the hub does not move.</source>
        <translation>Óxido superficial leve en el prisionero; el cubo no se mueve.</translation>
    </message>
    <message>
        <source>Rust around the hub or rivets; still tight.</source>
        <translation>Óxido alrededor del cubo o de los remaches; sigue firme.</translation>
    </message>
    <message>
        <source>The hub has moved on the shaft, a rivet is loose, or the fan sits at the wrong height.</source>
        <translation>El cubo se ha movido en el eje, hay un remache flojo o el ventilador está a una altura equivocada.</translation>
    </message>
    <message>
        <source>The hub slips or is cracked: keep the fan off.</source>
        <translation>El cubo patina o está agrietado: no deje funcionar el ventilador.</translation>
    </message>
    <message>
        <source>Blades are whole, clean and run true.</source>
        <translation>Las aspas están enteras y limpias y giran centradas.</translation>
    </message>
    <message>
        <source>Dirt or small scratches; no nick, runs true.</source>
        <translation>Suciedad o pequeños arañazos; ninguna mella, giran centradas.</translation>
    </message>
    <message>
        <source>A nick at an edge or a slight wobble; no crack.</source>
        <translation>Una mella en un borde o un leve cabeceo; ninguna grieta.</translation>
    </message>
    <message>
        <source>Several nicks, a bent blade, or a wobble that shakes the top.</source>
        <translation>Varias mellas, un aspa doblada o un cabeceo que sacude la tapa.</translation>
    </message>
    <message>
        <source>A crack at a root, or a blade that strikes the guard: keep the fan off.</source>
        <translation>Una grieta en una raíz o un aspa que golpea la rejilla: no deje funcionar el ventilador.</translation>
    </message>
    <message>
        <source>Look at each root and edge for cracks and nicks, and watch for wobble from outside the guard.</source>
        <translation>Mire cada raíz y cada borde en busca de grietas y mellas, y observe el cabeceo desde fuera de la rejilla.</translation>
    </message>
    <message>
        <source>Look for nicks from ice and marks of the blade on the guard.</source>
        <translation>Busque mellas de hielo y marcas del aspa en la rejilla.</translation>
    </message>
    <message>
        <source>crack at a root</source>
        <translation>grieta en una raíz</translation>
    </message>
    <message>
        <source>out of balance</source>
        <translation>desequilibrio</translation>
    </message>
    <message>
        <source>hub slipped on the shaft</source>
        <translation>el cubo patinó en el eje</translation>
    </message>
    <message>
        <source>No ice in the fan, and blades kept clean and balanced.</source>
        <translation>Que no entre hielo en el ventilador, y aspas limpias y equilibradas.</translation>
    </message>
    <message>
        <source>ASHRAE median service lives, public summary: propeller fan, 15 years</source>
        <translation>vidas medianas de servicio de ASHRAE, resumen público: ventilador axial, 15 años</translation>
    </message>
    <message>
        <source>Cabinet</source>
        <translation>Envolvente</translation>
    </message>
    <message>
        <source>panels and louvres</source>
        <translation>paneles y rejillas</translation>
    </message>
    <message>
        <source>seams and screw rows</source>
        <translation>juntas y filas de tornillos</translation>
    </message>
    <message>
        <source>Paint is whole, every screw is there; rust at most 0.03 % of the surface (ASTM D610 grade 9 or 10).</source>
        <translation>La pintura está entera, no falta ningún tornillo; óxido como mucho en el 0,03 % de la superficie (ASTM D610, grado 9 o 10).</translation>
    </message>
    <message>
        <source>Scratches and a few rust spots: at most 1 % (ASTM D610 grade 6 to 8); at most one screw is missing.</source>
        <translation>Arañazos y unos puntos de óxido: como mucho el 1 % (ASTM D610, grado 6 a 8); falta un tornillo como mucho.</translation>
    </message>
    <message>
        <source>Rust on up to 10 % (ASTM D610 grade 4 or 5), or several screws missing; panels still close.</source>
        <translation>Óxido en hasta el 10 % (ASTM D610, grado 4 o 5), o faltan varios tornillos; los paneles aún cierran.</translation>
    </message>
    <message>
        <source>Rust on up to 33 % (ASTM D610 grade 2 or 3), flakes, or a panel that rattles or gapes.</source>
        <translation>Óxido en hasta el 33 % (ASTM D610, grado 2 o 3), escamas, o un panel que traquetea o queda abierto.</translation>
    </message>
    <message>
        <source>Rust on more than 33 %, holes, or a panel over wiring that no longer closes.</source>
        <translation>Óxido en más del 33 %, agujeros, o un panel sobre el cableado que ya no cierra.</translation>
    </message>
    <message>
        <source>Wash it, and see that every panel fits and every screw is there.</source>
        <translation>Lávela y compruebe que cada panel ajusta y no falta ningún tornillo.</translation>
    </message>
    <message>
        <source>Touch up bare spots while they are dry, and look where snow will slide.</source>
        <translation>Retoque los puntos desnudos mientras están secos y mire por dónde resbalará la nieve.</translation>
    </message>
    <message>
        <source>rust</source>
        <translation>óxido</translation>
    </message>
    <message>
        <source>missing screws</source>
        <translation>tornillos que faltan</translation>
    </message>
    <message>
        <source>rattles</source>
        <translation>traqueteos</translation>
    </message>
    <message>
        <source>Washing, and paint on every scratch.</source>
        <translation>Lavado, y pintura en cada arañazo.</translation>
    </message>
    <message>
        <source>common practice, no source; 15 to 20 years</source>
        <translation>práctica común, sin fuente; de 15 a 20 años</translation>
    </message>
    <message>
        <source>Base pan</source>
        <translation>Bandeja base</translation>
    </message>
    <message>
        <source>pan, corners first</source>
        <translation>bandeja, primero las esquinas</translation>
    </message>
    <message>
        <source>drain holes and slots (dirt)</source>
        <translation>orificios y ranuras de drenaje (suciedad)</translation>
    </message>
    <message>
        <source>Every hole is open and the pan drains dry.</source>
        <translation>Todos los orificios están abiertos y la bandeja se vacía.</translation>
    </message>
    <message>
        <source>Some silt lies by the holes; water still runs off at once.</source>
        <translation>Hay algo de lodo junto a los orificios; el agua aún sale enseguida.</translation>
    </message>
    <message>
        <source>Up to half of the holes are blocked, or a puddle stays.</source>
        <translation>Hasta la mitad de los orificios está tapada, o queda un charco.</translation>
    </message>
    <message>
        <source>More than half of the holes are blocked, or wet mud lies against feet or tubes.</source>
        <translation>Más de la mitad de los orificios está tapada, o hay barro mojado contra patas o tubos.</translation>
    </message>
    <message>
        <source>No hole drains: water or ice stands in the pan.</source>
        <translation>No drena ningún orificio: hay agua o hielo en la bandeja.</translation>
    </message>
    <message>
        <source>Paint is whole; rust at most 0.03 % of the pan (ASTM D610 grade 9 or 10).</source>
        <translation>La pintura está entera; óxido como mucho en el 0,03 % de la bandeja (ASTM D610, grado 9 o 10).</translation>
    </message>
    <message>
        <source>A few rust spots: at most 1 % of the pan (ASTM D610 grade 6 to 8).</source>
        <translation>Unos puntos de óxido: como mucho el 1 % de la bandeja (ASTM D610, grado 6 a 8).</translation>
    </message>
    <message>
        <source>Rust on up to 10 % of the pan (ASTM D610 grade 4 or 5); firm when pressed.</source>
        <translation>Óxido en hasta el 10 % de la bandeja (ASTM D610, grado 4 o 5); firme al apretar.</translation>
    </message>
    <message>
        <source>Rust on up to 33 % of the pan (ASTM D610 grade 2 or 3), or flakes; it still carries its load.</source>
        <translation>Óxido en hasta el 33 % de la bandeja (ASTM D610, grado 2 o 3), o escamas; aún soporta su peso.</translation>
    </message>
    <message>
        <source>Rust on more than 33 % of the pan, holed, or it gives under the compressor, coil or accumulator.</source>
        <translation>Óxido en más del 33 % de la bandeja, perforada, o cede bajo el compresor, el serpentín o el acumulador.</translation>
    </message>
    <message>
        <source>Rake out mud and leaves, open the holes, and grade the pan, under the accumulator first.</source>
        <translation>Retire barro y hojas, abra los orificios y dé grado a la bandeja, empezando bajo el acumulador.</translation>
    </message>
    <message>
        <source>See that every hole is open before frost, so that melt water can leave.</source>
        <translation>Compruebe antes de las heladas que todos los orificios están abiertos, para que salga el agua de deshielo.</translation>
    </message>
    <message>
        <source>Grade the pan while it is dry.</source>
        <translation>Dé grado a la bandeja mientras está seca.</translation>
    </message>
    <message>
        <source>packed with mud</source>
        <translation>llena de barro</translation>
    </message>
    <message>
        <source>rusted through</source>
        <translation>perforada por el óxido</translation>
    </message>
    <message>
        <source>dammed by ice</source>
        <translation>obstruida por hielo</translation>
    </message>
    <message>
        <source>Open holes and an air gap below.</source>
        <translation>Orificios abiertos y un hueco de aire debajo.</translation>
    </message>
    <message>
        <source>Pad and feet</source>
        <translation>Losa y patas</translation>
    </message>
    <message>
        <source>level, height and feet</source>
        <translation>nivel, altura y patas</translation>
    </message>
    <message>
        <source>Firm and level within 1 %; at least 75 mm (3 in) above the ground; lines hang without strain.</source>
        <translation>Firme y nivelada dentro del 1 %; al menos 75 mm (3 in) sobre el suelo; las líneas cuelgan sin tensión.</translation>
    </message>
    <message>
        <source>Slopes at most 2 % (1/4 in per foot); firm; height kept.</source>
        <translation>Inclinada como mucho el 2 % (1/4 in por pie); firme; conserva la altura.</translation>
    </message>
    <message>
        <source>Slopes more than 2 %, or is less than 75 mm (3 in) above the ground, or a foot is loose; no strain on the lines.</source>
        <translation>Inclinada más del 2 %, o a menos de 75 mm (3 in) del suelo, o una pata floja; sin tensión en las líneas.</translation>
    </message>
    <message>
        <source>Cracked, sunk or washed out at a side; the lines begin to pull.</source>
        <translation>Agrietada, hundida o descalzada por un lado; las líneas empiezan a tirar.</translation>
    </message>
    <message>
        <source>The unit leans plainly, the lines are strained, or it stands in water or earth.</source>
        <translation>La unidad se inclina a simple vista, las líneas están tensas, o está en agua o tierra.</translation>
    </message>
    <message>
        <source>Measure the slope both ways and the clear height.</source>
        <translation>Mida la inclinación en ambos sentidos y la altura libre.</translation>
    </message>
    <message>
        <source>Hold the height against local snow depth, and see that no roof drips on it.</source>
        <translation>Compare la altura con la nieve del lugar y vea que ningún tejado gotee encima.</translation>
    </message>
    <message>
        <source>tilted</source>
        <translation>inclinada</translation>
    </message>
    <message>
        <source>settled</source>
        <translation>asentada</translation>
    </message>
    <message>
        <source>buried</source>
        <translation>enterrada</translation>
    </message>
    <message>
        <source>flooded</source>
        <translation>inundada</translation>
    </message>
    <message>
        <source>Level ground, gravel around it, and risers where water or snow stands.</source>
        <translation>Suelo nivelado, grava alrededor, y alzas donde se junta agua o nieve.</translation>
    </message>
    <message>
        <source>Clearances and site</source>
        <translation>Espacios libres y emplazamiento</translation>
    </message>
    <message>
        <source>space around the unit</source>
        <translation>espacio alrededor de la unidad</translation>
    </message>
    <message>
        <source>At least 60 cm (24 in) is free at every side and nothing wets or warms the unit.</source>
        <translation>Hay al menos 60 cm (24 in) libres a cada lado y nada moja ni calienta la unidad.</translation>
    </message>
    <message>
        <source>At least 30 cm (12 in) is free at every side; a few leaves or shoots.</source>
        <translation>Hay al menos 30 cm (12 in) libres a cada lado; unas hojas o brotes.</translation>
    </message>
    <message>
        <source>Less than 30 cm (12 in) is free at one side, or sprinkler, gutter or vent reaches the unit now and then.</source>
        <translation>Menos de 30 cm (12 in) libres por un lado, o un aspersor, canalón o salida de aire alcanza la unidad a veces.</translation>
    </message>
    <message>
        <source>Plants or goods touch the unit, or a dryer vent, gutter, sprinkler or animals reach it often.</source>
        <translation>Plantas u objetos tocan la unidad, o la alcanzan a menudo una secadora, un canalón, un aspersor o animales.</translation>
    </message>
    <message>
        <source>Air is shut off on two sides or above, or water, lint or urine falls on it daily.</source>
        <translation>El aire está cerrado por dos lados o por arriba, o le cae agua, pelusa u orina a diario.</translation>
    </message>
    <message>
        <source>Measure the free space and cut back plants.</source>
        <translation>Mida el espacio libre y pode las plantas.</translation>
    </message>
    <message>
        <source>Clear leaves, and look where snow will be piled and roof ice will fall.</source>
        <translation>Quite las hojas y mire dónde se amontonará la nieve y caerá el hielo del tejado.</translation>
    </message>
    <message>
        <source>blown air drawn in again</source>
        <translation>aire expulsado que vuelve a entrar</translation>
    </message>
    <message>
        <source>wetting</source>
        <translation>mojaduras</translation>
    </message>
    <message>
        <source>Moving the source away: vent, sprinkler, gutter, plants.</source>
        <translation>Alejar la causa: salida de aire, aspersor, canalón, plantas.</translation>
    </message>
    <message>
        <source>Crankcase heater</source>
        <translation>Resistencia de cárter</translation>
    </message>
    <message>
        <source>band and leads</source>
        <translation>banda y cables</translation>
    </message>
    <message>
        <source>The band is tight on the shell below the oil level, the leads are whole, and the shell is warm when it should be.</source>
        <translation>La banda está ceñida a la carcasa por debajo del nivel de aceite, los cables enteros, y la carcasa templada cuando debe.</translation>
    </message>
    <message>
        <source>The band is tight; leads are faded or the strap shows light rust.</source>
        <translation>La banda está ceñida; cables descoloridos o la abrazadera con óxido leve.</translation>
    </message>
    <message>
        <source>The strap is loose or rusty, or a lead is stiff; the heater still warms.</source>
        <translation>La abrazadera está floja u oxidada, o un cable rígido; la resistencia aún calienta.</translation>
    </message>
    <message>
        <source>The band gaps from the shell, a splice is open to rain, or the shell is less than 6 K (10 °F) above its surroundings after 12 hours.</source>
        <translation>La banda se separa de la carcasa, un empalme queda a la lluvia, o la carcasa está menos de 6 K (10 °F) por encima del ambiente tras 12 horas.</translation>
    </message>
    <message>
        <source>The heater is cold when it should be warm, or a lead is burnt or bare.</source>
        <translation>La resistencia está fría cuando debería calentar, o un cable está quemado o pelado.</translation>
    </message>
    <message>
        <source>Note whether the heater is on, and whether a switch turns it off for the season.</source>
        <translation>Anote si la resistencia está conectada y si un interruptor la apaga en temporada.</translation>
    </message>
    <message>
        <source>Before any work on the power, measure shell and surroundings, and note for how many hours the heater has been on.</source>
        <translation>Antes de tocar la corriente, mida la carcasa y el ambiente, y anote cuántas horas ha estado conectada la resistencia.</translation>
    </message>
    <message>
        <source>With the power locked off, look at the strap, the leads and the splice.</source>
        <translation>Con la corriente bloqueada, mire la abrazadera, los cables y el empalme.</translation>
    </message>
    <message>
        <source>open element</source>
        <translation>elemento abierto</translation>
    </message>
    <message>
        <source>loose band</source>
        <translation>banda floja</translation>
    </message>
    <message>
        <source>failed thermostat</source>
        <translation>termostato averiado</translation>
    </message>
    <message>
        <source>A tight strap and a sealed splice.</source>
        <translation>Una abrazadera ceñida y un empalme sellado.</translation>
    </message>
    <message>
        <source>Contactor</source>
        <translation>Contactor</translation>
    </message>
    <message>
        <source>points, coil and lugs</source>
        <translation>contactos, bobina y terminales</translation>
    </message>
    <message>
        <source>Points are bright and even, lugs clean, it pulls in with one click and is quiet.</source>
        <translation>Los contactos están brillantes y parejos, los terminales limpios; cierra de un golpe y no hace ruido.</translation>
    </message>
    <message>
        <source>Points are greyed, with slight marks; quiet.</source>
        <translation>Los contactos están grises, con marcas leves; sin ruido.</translation>
    </message>
    <message>
        <source>Points are pitted on part of their face, or the coil hums, or insects are inside.</source>
        <translation>Los contactos están picados en parte de su cara, o la bobina zumba, o hay insectos dentro.</translation>
    </message>
    <message>
        <source>Points are deeply pitted or burnt, a lug is discoloured by heat, or it chatters.</source>
        <translation>Los contactos están muy picados o quemados, un terminal está teñido por el calor, o repiquetea.</translation>
    </message>
    <message>
        <source>Points are welded or gone, the coil is open, or plastic has melted: the unit may not stop or start.</source>
        <translation>Los contactos están soldados o gastados, la bobina abierta o el plástico fundido: la unidad puede no parar o no arrancar.</translation>
    </message>
    <message>
        <source>Look at the points and lugs, and clear out insects.</source>
        <translation>Mire los contactos y terminales y quite los insectos.</translation>
    </message>
    <message>
        <source>Have the voltage drop across each closed pole measured by someone qualified.</source>
        <translation>Haga medir por una persona competente la caída de tensión en cada polo cerrado.</translation>
    </message>
    <message>
        <source>Look at the points and lugs again and hold them against the spring photo.</source>
        <translation>Mire otra vez los contactos y terminales y compárelos con la foto de primavera.</translation>
    </message>
    <message>
        <source>pitted points</source>
        <translation>contactos picados</translation>
    </message>
    <message>
        <source>welded points (the unit will not stop)</source>
        <translation>contactos soldados (la unidad no se para)</translation>
    </message>
    <message>
        <source>open coil</source>
        <translation>bobina abierta</translation>
    </message>
    <message>
        <source>ants</source>
        <translation>hormigas</translation>
    </message>
    <message>
        <source>A closed panel and a barrier against insects.</source>
        <translation>Un panel cerrado y una barrera contra insectos.</translation>
    </message>
    <message>
        <source>common practice, no source, for small contactors, 8 to 10 years; ASHRAE&apos;s public summary gives 17 for motor starters</source>
        <translation>práctica común, sin fuente, para contactores pequeños, de 8 a 10 años; el resumen público de ASHRAE da 17 para arrancadores de motor</translation>
    </message>
    <message>
        <source>Run capacitor</source>
        <translation>Capacitor de marcha</translation>
    </message>
    <message>
        <source>case and terminals</source>
        <translation>cuerpo y bornes</translation>
    </message>
    <message>
        <source>The case is flat-topped, dry and clean, terminals bright; each section measures within the tolerance on its label.</source>
        <translation>El cuerpo tiene la tapa plana, está seco y limpio, los bornes brillan; cada sección mide dentro de la tolerancia de su etiqueta.</translation>
    </message>
    <message>
        <source>Dust or faded print, terminals dull; each section within the tolerance on its label.</source>
        <translation>Polvo o letras descoloridas, bornes apagados; cada sección dentro de la tolerancia de su etiqueta.</translation>
    </message>
    <message>
        <source>A terminal is discoloured, rust sits at the rim, or a section measures beyond its label&apos;s tolerance but less than 10 % low.</source>
        <translation>Un borne está teñido, hay óxido en el reborde, o una sección se sale de la tolerancia de su etiqueta pero está menos del 10 % por debajo.</translation>
    </message>
    <message>
        <source>The top begins to dome, a terminal is loose or burnt, or a section measures more than 10 % low.</source>
        <translation>La tapa empieza a abombarse, un borne está flojo o quemado, o una sección está más del 10 % por debajo.</translation>
    </message>
    <message>
        <source>The top is bulged, oil has leaked, or a section measures nothing.</source>
        <translation>La tapa está hinchada, ha perdido aceite, o una sección no mide nada.</translation>
    </message>
    <message>
        <source>Have each section measured by someone qualified, after discharge, and hold it against its label.</source>
        <translation>Haga medir cada sección por una persona competente, tras descargarlo, y compárela con su etiqueta.</translation>
    </message>
    <message>
        <source>Have each section measured again with the same meter.</source>
        <translation>Haga medir otra vez cada sección con el mismo medidor.</translation>
    </message>
    <message>
        <source>value drifts</source>
        <translation>el valor deriva</translation>
    </message>
    <message>
        <source>open section</source>
        <translation>sección abierta</translation>
    </message>
    <message>
        <source>bulged</source>
        <translation>hinchado</translation>
    </message>
    <message>
        <source>Shade, the right voltage class, and clean terminals.</source>
        <translation>Sombra, la clase de tensión correcta y bornes limpios.</translation>
    </message>
    <message>
        <source>common practice, no source; 5 to 15 years</source>
        <translation>práctica común, sin fuente; de 5 a 15 años</translation>
    </message>
    <message>
        <source>Start device</source>
        <translation>Dispositivo de arranque</translation>
    </message>
    <message>
        <source>body and wiring</source>
        <translation>cuerpo y cableado</translation>
    </message>
    <message>
        <source>Firmly mounted, wiring clean, no sign of heat.</source>
        <translation>Bien sujeto, cableado limpio, ninguna señal de calor.</translation>
    </message>
    <message>
        <source>Dusty or faded; firm, no sign of heat.</source>
        <translation>Con polvo o descolorido; firme, ninguna señal de calor.</translation>
    </message>
    <message>
        <source>A lead is stiff or the mount loose.</source>
        <translation>Un cable está rígido o el soporte flojo.</translation>
    </message>
    <message>
        <source>The case or a lead is browned or cracked.</source>
        <translation>El cuerpo o un cable está tostado o agrietado.</translation>
    </message>
    <message>
        <source>Burnt, melted, leaking or stuck in circuit.</source>
        <translation>Quemado, fundido, con fugas o pegado en el circuito.</translation>
    </message>
    <message>
        <source>Look at mount and wiring for signs of heat.</source>
        <translation>Busque señales de calor en el soporte y el cableado.</translation>
    </message>
    <message>
        <source>Look at mount and wiring again.</source>
        <translation>Mire otra vez el soporte y el cableado.</translation>
    </message>
    <message>
        <source>stuck in circuit</source>
        <translation>pegado en el circuito</translation>
    </message>
    <message>
        <source>Only fitted where the maker asks for one.</source>
        <translation>Solo se monta donde el fabricante lo pide.</translation>
    </message>
    <message>
        <source>Defrost control</source>
        <translation>Control de desescarche</translation>
    </message>
    <message>
        <source>board and relays</source>
        <translation>placa y relés</translation>
    </message>
    <message>
        <source>coil sensor</source>
        <translation>sensor del serpentín</translation>
    </message>
    <message>
        <source>Clipped tight to its tube and insulated; its lead is whole.</source>
        <translation>Bien sujeto a su tubo y aislado; su cable está entero.</translation>
    </message>
    <message>
        <source>Clipped tight; its insulation is worn.</source>
        <translation>Bien sujeto; su aislamiento está gastado.</translation>
    </message>
    <message>
        <source>The clip has loosened or the insulation is missing; a defrost still starts and ends as set.</source>
        <translation>La pinza se ha aflojado o falta el aislamiento; un desescarche aún empieza y termina según el ajuste.</translation>
    </message>
    <message>
        <source>The sensor hangs loose or reads plainly wrong; defrosts start late or run to the time limit.</source>
        <translation>El sensor cuelga suelto o marca claramente mal; los desescarches empiezan tarde o agotan el tiempo límite.</translation>
    </message>
    <message>
        <source>The sensor or its lead is broken; the unit does not defrost, or defrosts without need.</source>
        <translation>El sensor o su cable está roto; la unidad no desescarcha, o desescarcha sin necesidad.</translation>
    </message>
    <message>
        <source>The board is dry and clean; connectors are firm; a forced defrost runs as the maker sets it.</source>
        <translation>La placa está seca y limpia; los conectores firmes; un desescarche forzado va como lo ajusta el fabricante.</translation>
    </message>
    <message>
        <source>Dust or faded marks; the forced defrost is right.</source>
        <translation>Polvo o letras descoloridas; el desescarche forzado es correcto.</translation>
    </message>
    <message>
        <source>A connector is dull or green, or a stored fault is found; the defrost still ends by temperature.</source>
        <translation>Un conector está apagado o verde, o se encuentra un fallo guardado; el desescarche aún termina por temperatura.</translation>
    </message>
    <message>
        <source>Browned spots, damp or ants on the board, or the defrost ends only by time.</source>
        <translation>Manchas tostadas, humedad u hormigas en la placa, o el desescarche termina solo por tiempo.</translation>
    </message>
    <message>
        <source>A relay is stuck or burnt, or no defrost starts.</source>
        <translation>Un relé está pegado o quemado, o no empieza ningún desescarche.</translation>
    </message>
    <message>
        <source>Read stored faults and look whether the fan relay lets go.</source>
        <translation>Lea los fallos guardados y mire si el relé del ventilador suelta.</translation>
    </message>
    <message>
        <source>Force a defrost as the maker describes: note start temperature, minutes, what ended it, and whether the melt drains.</source>
        <translation>Fuerce un desescarche como indica el fabricante: anote la temperatura inicial, los minutos, qué lo terminó y si el agua escurre.</translation>
    </message>
    <message>
        <source>See that the sensor is clipped and insulated.</source>
        <translation>Compruebe que el sensor está sujeto y aislado.</translation>
    </message>
    <message>
        <source>relay stuck</source>
        <translation>relé pegado</translation>
    </message>
    <message>
        <source>sensor open or drifted</source>
        <translation>sensor abierto o con deriva</translation>
    </message>
    <message>
        <source>clip loose</source>
        <translation>pinza floja</translation>
    </message>
    <message>
        <source>A dry board, and a sensor that stays insulated and clipped.</source>
        <translation>Una placa seca, y un sensor que sigue aislado y sujeto.</translation>
    </message>
    <message>
        <source>common practice, no source; the board may be impossible to get after 10 to 15 years</source>
        <translation>práctica común, sin fuente; la placa puede ser imposible de conseguir tras 10 a 15 años</translation>
    </message>
    <message>
        <source>Disconnect</source>
        <translation>Seccionador</translation>
    </message>
    <message>
        <source>box, blades and fuses</source>
        <translation>caja, cuchillas y fusibles</translation>
    </message>
    <message>
        <source>The cover shuts, the inside is dry, blades and clips are bright and tight, and the fuses are the right size.</source>
        <translation>La tapa cierra, el interior está seco, cuchillas y pinzas brillantes y firmes, y los fusibles son del tamaño correcto.</translation>
    </message>
    <message>
        <source>Light dulling or dust; dry, tight.</source>
        <translation>Algo apagado o con polvo; seco, firme.</translation>
    </message>
    <message>
        <source>Water marks, an insect nest, or a clip that has lost some grip; no sign of heat.</source>
        <translation>Marcas de agua, un nido de insectos o una pinza que agarra menos; ninguna señal de calor.</translation>
    </message>
    <message>
        <source>A blade, clip or lug is discoloured by heat, rust is inside, or the cover no longer shuts.</source>
        <translation>Una cuchilla, pinza o terminal está teñido por el calor, hay óxido dentro, o la tapa ya no cierra.</translation>
    </message>
    <message>
        <source>Burnt, loose or wet inside, wrong fuse, or live metal within reach: have it made safe now.</source>
        <translation>Interior quemado, flojo o mojado, fusible equivocado o metal con tensión al alcance: haga que lo aseguren ya.</translation>
    </message>
    <message>
        <source>Look for heat marks, water and nests, and see that rating and cover are right.</source>
        <translation>Busque marcas de calor, agua y nidos, y vea que el tamaño y la tapa son correctos.</translation>
    </message>
    <message>
        <source>Look again for water and heat marks, and that the cover shuts.</source>
        <translation>Busque otra vez marcas de agua y calor, y vea que la tapa cierra.</translation>
    </message>
    <message>
        <source>burnt clip</source>
        <translation>pinza quemada</translation>
    </message>
    <message>
        <source>wrong fuse</source>
        <translation>fusible equivocado</translation>
    </message>
    <message>
        <source>wasps</source>
        <translation>avispas</translation>
    </message>
    <message>
        <source>A sealed top, and lugs tightened as the maker says.</source>
        <translation>Una parte superior sellada, y terminales apretados como dice el fabricante.</translation>
    </message>
    <message>
        <source>Whip (cable to the unit)</source>
        <translation>Conducto flexible (cable a la unidad)</translation>
    </message>
    <message>
        <source>conduit and connectors</source>
        <translation>conducto y conectores</translation>
    </message>
    <message>
        <source>Whole, seated in both connectors, and it does not lie in water.</source>
        <translation>Entero, asentado en los dos conectores, y no está en agua.</translation>
    </message>
    <message>
        <source>Faded by the sun; whole and seated.</source>
        <translation>Descolorido por el sol; entero y asentado.</translation>
    </message>
    <message>
        <source>Fine cracks, a loose strap or a connector that turns by hand.</source>
        <translation>Grietas finas, una abrazadera floja o un conector que gira a mano.</translation>
    </message>
    <message>
        <source>Split, chafed or pulled part way out of a connector; no wire shows.</source>
        <translation>Rajado, rozado o medio salido de un conector; no se ve ningún conductor.</translation>
    </message>
    <message>
        <source>Wires show, or the cable is out of its box: have it made safe now.</source>
        <translation>Se ven conductores, o el cable está fuera de su caja: haga que lo aseguren ya.</translation>
    </message>
    <message>
        <source>With the power locked off, tug gently at both connectors.</source>
        <translation>Con la corriente bloqueada, tire con suavidad de los dos conectores.</translation>
    </message>
    <message>
        <source>Look for splits, chafing and standing water.</source>
        <translation>Busque rajas, roces y agua estancada.</translation>
    </message>
    <message>
        <source>pulled from the box</source>
        <translation>salido de la caja</translation>
    </message>
    <message>
        <source>wet</source>
        <translation>mojado</translation>
    </message>
    <message>
        <source>chafed</source>
        <translation>rozado</translation>
    </message>
    <message>
        <source>Seated connectors and a jacket rated for sunlight.</source>
        <translation>Conectores asentados y una cubierta apta para el sol.</translation>
    </message>
    <message>
        <source>Ground and bonding</source>
        <translation>Tierra y conexión equipotencial</translation>
    </message>
    <message>
        <source>lug and wire</source>
        <translation>terminal y conductor</translation>
    </message>
    <message>
        <source>The lug is tight on clean metal and the wire is whole.</source>
        <translation>El terminal está firme sobre metal limpio y el conductor entero.</translation>
    </message>
    <message>
        <source>Lug or wire is dulled; tight.</source>
        <translation>Terminal o conductor apagado; firme.</translation>
    </message>
    <message>
        <source>Green or white crust at the lug, or paint under it; still tight.</source>
        <translation>Costra verde o blanca en el terminal, o pintura debajo; aún firme.</translation>
    </message>
    <message>
        <source>The lug turns by hand, or strands are broken.</source>
        <translation>El terminal gira a mano, o hay hilos rotos.</translation>
    </message>
    <message>
        <source>The wire is off or broken, or continuity to the cabinet is not found: keep the unit off until it is made good.</source>
        <translation>El conductor está suelto o roto, o no hay continuidad con la envolvente: deje la unidad apagada hasta repararlo.</translation>
    </message>
    <message>
        <source>Look at lug and wire, and have continuity to the cabinet measured.</source>
        <translation>Mire el terminal y el conductor, y haga medir la continuidad con la envolvente.</translation>
    </message>
    <message>
        <source>Look at lug and wire again.</source>
        <translation>Mire otra vez el terminal y el conductor.</translation>
    </message>
    <message>
        <source>loose lug</source>
        <translation>terminal flojo</translation>
    </message>
    <message>
        <source>joint over paint</source>
        <translation>unión sobre pintura</translation>
    </message>
    <message>
        <source>corroded lug</source>
        <translation>terminal corroído</translation>
    </message>
    <message>
        <source>Clean metal under a tight lug.</source>
        <translation>Metal limpio bajo un terminal firme.</translation>
    </message>
    <message>
        <source>Breaker or fuse</source>
        <translation>Interruptor automático o fusible</translation>
    </message>
    <message>
        <source>device against the nameplate</source>
        <translation>dispositivo frente a la placa</translation>
    </message>
    <message>
        <source>Its size lies between the nameplate&apos;s minimum circuit and maximum fuse; it is cool and firm.</source>
        <translation>Su tamaño está entre el circuito mínimo y el fusible máximo de la placa; está frío y firme.</translation>
    </message>
    <message>
        <source>Size is right; its marking is faded.</source>
        <translation>El tamaño es correcto; su marca está descolorida.</translation>
    </message>
    <message>
        <source>Size is right; it has tripped since the last visit or feels warm.</source>
        <translation>El tamaño es correcto; se ha disparado desde la última visita o se nota templado.</translation>
    </message>
    <message>
        <source>Its size cannot be read, or it is warm and discoloured.</source>
        <translation>No se puede leer su tamaño, o está templado y teñido.</translation>
    </message>
    <message>
        <source>It is larger than the nameplate allows, burnt, or does not hold: have it put right now.</source>
        <translation>Es mayor de lo que admite la placa, está quemado o no se sostiene: haga que lo corrijan ya.</translation>
    </message>
    <message>
        <source>Read its size and hold it against the nameplate.</source>
        <translation>Lea su tamaño y compárelo con la placa.</translation>
    </message>
    <message>
        <source>See that nobody has fitted another size since.</source>
        <translation>Vea que nadie haya montado otro tamaño desde entonces.</translation>
    </message>
    <message>
        <source>too large for the unit</source>
        <translation>demasiado grande para la unidad</translation>
    </message>
    <message>
        <source>worn</source>
        <translation>gastado</translation>
    </message>
    <message>
        <source>A size that the nameplate allows.</source>
        <translation>Un tamaño que la placa admite.</translation>
    </message>
    <message>
        <source>Suction accumulator</source>
        <translation>Acumulador de succión</translation>
    </message>
    <message>
        <source>crown and weld</source>
        <translation>casquete superior y soldadura</translation>
    </message>
    <message>
        <source>shell, all round</source>
        <translation>cuerpo, todo alrededor</translation>
    </message>
    <message>
        <source>bottom and plug</source>
        <translation>fondo y tapón</translation>
    </message>
    <message>
        <source>inlet and outlet joints</source>
        <translation>uniones de entrada y salida</translation>
    </message>
    <message>
        <source>Both joints are clean and dry, without green, white or oily marks.</source>
        <translation>Las dos uniones están limpias y secas, sin marcas verdes, blancas ni de aceite.</translation>
    </message>
    <message>
        <source>The joints are dulled or lightly stained, dry, with no crust and no oil.</source>
        <translation>Las uniones están apagadas o algo manchadas, secas, sin costra ni aceite.</translation>
    </message>
    <message>
        <source>Green or white crust, or light rust, sits on a joint; wiped off, the metal below is smooth and there is no oil.</source>
        <translation>Hay costra verde o blanca, u óxido leve, en una unión; al limpiarla, el metal está liso y no hay aceite.</translation>
    </message>
    <message>
        <source>A joint is pitted or deeply crusted, or shows an old oil mark that does not come back after wiping.</source>
        <translation>Una unión está picada o con mucha costra, o tiene una marca vieja de aceite que no vuelve tras limpiarla.</translation>
    </message>
    <message>
        <source>A joint weeps: fresh oil comes back after wiping, or a leak detector answers there.</source>
        <translation>Una unión rezuma: vuelve aceite fresco tras limpiarla, o un detector de fugas responde ahí.</translation>
    </message>
    <message>
        <source>strap contact line</source>
        <translation>línea de contacto de la abrazadera</translation>
    </message>
    <message>
        <source>edge of the insulation jacket</source>
        <translation>borde de la camisa aislante</translation>
    </message>
    <message>
        <source>The jacket fits closely, its edge is dry and the metal beside it is clean.</source>
        <translation>La camisa ajusta bien, su borde está seco y el metal de al lado limpio.</translation>
    </message>
    <message>
        <source>The edge is frayed or lifted a little; the metal beside it has at most a few rust spots (up to 1 % of what shows).</source>
        <translation>El borde está deshilachado o algo levantado; el metal de al lado tiene como mucho unos puntos de óxido (hasta el 1 % de lo visible).</translation>
    </message>
    <message>
        <source>The edge holds moisture; rust beside it covers up to 10 % of what shows, and no flakes come loose.</source>
        <translation>El borde retiene humedad; el óxido de al lado cubre hasta el 10 % de lo visible y no se suelta ninguna escama.</translation>
    </message>
    <message>
        <source>The jacket is soaked or torn; rust beside it covers up to 33 % of what shows, or flakes come loose by hand.</source>
        <translation>La camisa está empapada o rota; el óxido de al lado cubre hasta el 33 % de lo visible, o se sueltan escamas con la mano.</translation>
    </message>
    <message>
        <source>Rust beside or under the edge covers more than 33 % of what shows, is deeply pitted, or a hole or fresh oil shows.</source>
        <translation>El óxido junto al borde o debajo cubre más del 33 % de lo visible, está muy picado, o se ve un agujero o aceite fresco.</translation>
    </message>
    <message>
        <source>No rust, or a few pinpoints you must look for: at most 0.03 % of the surface (ASTM D610 grade 9 or 10).</source>
        <translation>Sin óxido, o unos puntitos que hay que buscar: como mucho el 0,03 % de la superficie (ASTM D610, grado 9 o 10).</translation>
    </message>
    <message>
        <source>A few rust spots on sound paint or metal: at most 1 % of the surface (ASTM D610 grade 6 to 8); nothing to feel.</source>
        <translation>Unos puntos de óxido sobre pintura o metal sano: como mucho el 1 % de la superficie (ASTM D610, grado 6 a 8); no se notan al tacto.</translation>
    </message>
    <message>
        <source>Rust on up to 10 % of the surface (ASTM D610 grade 4 or 5); it feels rough but no flakes come loose.</source>
        <translation>Óxido en hasta el 10 % de la superficie (ASTM D610, grado 4 o 5); se nota áspero pero no se suelta ninguna escama.</translation>
    </message>
    <message>
        <source>Rust on up to 33 % of the surface (ASTM D610 grade 2 or 3), or flakes come loose by hand, or pits can be seen.</source>
        <translation>Óxido en hasta el 33 % de la superficie (ASTM D610, grado 2 o 3), o se sueltan escamas con la mano, o se ven picaduras.</translation>
    </message>
    <message>
        <source>Rust on more than 33 % of the surface, deep pitting, a hole, or fresh oil: treat the vessel as unsafe under charge.</source>
        <translation>Óxido en más del 33 % de la superficie, picaduras profundas, un agujero o aceite fresco: considere inseguro el recipiente con carga.</translation>
    </message>
    <message>
        <source>While the unit cools, look where the accumulator sweats, frosts or shows oil, and mark the wet zones.</source>
        <translation>Mientras la unidad enfría, mire dónde el acumulador suda, se escarcha o muestra aceite, y marque las zonas mojadas.</translation>
    </message>
    <message>
        <source>Try the joints and the bottom with a leak detector.</source>
        <translation>Pruebe las uniones y el fondo con un detector de fugas.</translation>
    </message>
    <message>
        <source>Grade every zone, the shaded side first; a zone under the jacket that cannot be seen is &quot;not seen&quot;.</source>
        <translation>Dé grado a cada zona, primero el lado en sombra; una zona bajo la camisa que no se puede ver queda «sin ver».</translation>
    </message>
    <message>
        <source>Grade every zone while it is dry, and photograph the worst spot of each.</source>
        <translation>Dé grado a cada zona mientras está seca y fotografíe el peor punto de cada una.</translation>
    </message>
    <message>
        <source>Measure the wall at the marked spots.</source>
        <translation>Mida la pared en los puntos marcados.</translation>
    </message>
    <message>
        <source>Protect sound metal that begins to rust, if it is dry and the wall is not in doubt; leave a gap below so that water drains.</source>
        <translation>Proteja el metal sano que empieza a oxidarse, si está seco y no hay duda de la pared; deje un hueco abajo para que escurra el agua.</translation>
    </message>
    <message>
        <source>rust fed by sweating, under paint or jacket</source>
        <translation>óxido alimentado por el sudor, bajo pintura o camisa</translation>
    </message>
    <message>
        <source>pitting at the bottom</source>
        <translation>picaduras en el fondo</translation>
    </message>
    <message>
        <source>pinhole at a joint</source>
        <translation>poro en una unión</translation>
    </message>
    <message>
        <source>wear under the strap</source>
        <translation>desgaste bajo la abrazadera</translation>
    </message>
    <message>
        <source>weeping plug</source>
        <translation>tapón que rezuma</translation>
    </message>
    <message>
        <source>blocked oil-return hole</source>
        <translation>orificio de retorno de aceite tapado</translation>
    </message>
    <message>
        <source>Kept dry between seasons, coated with what suits cold wet metal, no wet wrap, and a gap below for water to run off.</source>
        <translation>Mantenerlo seco entre temporadas, con un recubrimiento apto para metal frío y mojado, sin envoltura mojada y con un hueco abajo para que escurra el agua.</translation>
    </message>
    <message>
        <source>common practice, no source; about 7 to 10 years by the sea</source>
        <translation>práctica común, sin fuente; unos 7 a 10 años junto al mar</translation>
    </message>
    <message>
        <source>Outdoor coil</source>
        <translation>Serpentín exterior</translation>
    </message>
    <message>
        <source>faces (dirt)</source>
        <translation>caras (suciedad)</translation>
    </message>
    <message>
        <source>The faces are clean: at least 95 % is open, and light shows through evenly.</source>
        <translation>Las caras están limpias: al menos el 95 % está libre y la luz pasa por igual.</translation>
    </message>
    <message>
        <source>Thin dust or a few seeds: at least 90 % of the faces is still open.</source>
        <translation>Polvo fino o unas semillas: al menos el 90 % de las caras sigue libre.</translation>
    </message>
    <message>
        <source>A mat of dirt, leaves or hair blocks up to 30 % of a face.</source>
        <translation>Una capa de suciedad, hojas o pelo tapa hasta el 30 % de una cara.</translation>
    </message>
    <message>
        <source>Dirt blocks up to half of a face, or is packed between the rows.</source>
        <translation>La suciedad tapa hasta la mitad de una cara, o está metida entre las filas.</translation>
    </message>
    <message>
        <source>More than half of a face is blocked, or air can hardly be felt through it with the fan running.</source>
        <translation>Más de la mitad de una cara está tapada, o apenas se nota aire a través con el ventilador en marcha.</translation>
    </message>
    <message>
        <source>lowest two rows of tubes</source>
        <translation>las dos filas de tubos más bajas</translation>
    </message>
    <message>
        <source>return bends</source>
        <translation>curvas de retorno</translation>
    </message>
    <message>
        <source>header and distributor joints</source>
        <translation>uniones del colector y del distribuidor</translation>
    </message>
    <message>
        <source>rub points at the support sheets</source>
        <translation>puntos de roce en las chapas de apoyo</translation>
    </message>
    <message>
        <source>Every tube sits free or sleeved; no bright line shows where it passes a sheet.</source>
        <translation>Cada tubo está libre o con manguito; no hay línea brillante donde cruza una chapa.</translation>
    </message>
    <message>
        <source>A bright line shows where a tube touches, without a groove.</source>
        <translation>Una línea brillante muestra dónde toca un tubo, sin surco.</translation>
    </message>
    <message>
        <source>A groove can be felt with a fingernail, or a tube can be moved against the sheet.</source>
        <translation>Se nota un surco con la uña, o un tubo se mueve contra la chapa.</translation>
    </message>
    <message>
        <source>A groove is plainly deep, or fine metal dust lies below a tube that shakes.</source>
        <translation>Un surco es claramente profundo, o hay polvo fino de metal bajo un tubo que tiembla.</translation>
    </message>
    <message>
        <source>A tube is worn through or nearly so, or fresh oil shows at a rub point.</source>
        <translation>Un tubo está gastado del todo o casi, o se ve aceite fresco en un punto de roce.</translation>
    </message>
    <message>
        <source>The tubes are clean or evenly dulled; no crust, no oil, no dents.</source>
        <translation>Los tubos están limpios o apagados por igual; sin costra, aceite ni abolladuras.</translation>
    </message>
    <message>
        <source>Light tarnish or a few dry spots of crust; the metal below is smooth.</source>
        <translation>Algo deslustrados o con unos puntos secos de costra; el metal debajo está liso.</translation>
    </message>
    <message>
        <source>Crust or pitting in several places, on up to 10 % of what shows, all dry and free of oil.</source>
        <translation>Costra o picaduras en varios sitios, en hasta el 10 % de lo visible, todo seco y sin aceite.</translation>
    </message>
    <message>
        <source>Deep pits, a flattened tube, crust on up to 33 % of what shows, or an old oil mark.</source>
        <translation>Picaduras profundas, un tubo aplastado, costra en hasta el 33 % de lo visible o una marca vieja de aceite.</translation>
    </message>
    <message>
        <source>A leak is proved, oil comes back after wiping, or crust and pits cover more than 33 % of what shows.</source>
        <translation>Hay una fuga comprobada, vuelve el aceite tras limpiar, o costra y picaduras cubren más del 33 % de lo visible.</translation>
    </message>
    <message>
        <source>Rinse the coil from inside out with plain water at low pressure, and note how it looked before.</source>
        <translation>Enjuague el serpentín de dentro afuera con agua sola a baja presión, y anote cómo estaba antes.</translation>
    </message>
    <message>
        <source>Search the bends, joints and lowest rows for oil marks and crust.</source>
        <translation>Busque marcas de aceite y costra en curvas, uniones y filas más bajas.</translation>
    </message>
    <message>
        <source>Take liquid pressure and outdoor temperature after 15 steady minutes, to see what the wash did.</source>
        <translation>Tome la presión de líquido y la temperatura exterior tras 15 minutos estables, para ver qué logró el lavado.</translation>
    </message>
    <message>
        <source>Remove leaves and seed fluff; rinse only if the coil is matted.</source>
        <translation>Quite hojas y pelusa de semillas; enjuague solo si el serpentín está tapado.</translation>
    </message>
    <message>
        <source>Look at bends, joints and rub points while they are dry, and grade them.</source>
        <translation>Mire curvas, uniones y puntos de roce mientras están secos, y déles grado.</translation>
    </message>
    <message>
        <source>pinhole or branching corrosion in a tube</source>
        <translation>poro o corrosión ramificada en un tubo</translation>
    </message>
    <message>
        <source>tube worn through by vibration</source>
        <translation>tubo gastado por vibración</translation>
    </message>
    <message>
        <source>impact</source>
        <translation>golpe</translation>
    </message>
    <message>
        <source>corrosion where two metals meet</source>
        <translation>corrosión donde se juntan dos metales</translation>
    </message>
    <message>
        <source>dirt</source>
        <translation>suciedad</translation>
    </message>
    <message>
        <source>A rinse with plain water each year, clear ground around it, and no chemicals left on it.</source>
        <translation>Un enjuague con agua sola cada año, suelo despejado alrededor y sin productos químicos sobre él.</translation>
    </message>
    <message>
        <source>ASHRAE median service lives, public summary: DX coil, 20 years; about 7 to 12 years by the sea is common practice</source>
        <translation>vidas medianas de servicio de ASHRAE, resumen público: serpentín de expansión directa, 20 años; unos 7 a 12 años junto al mar es práctica común</translation>
    </message>
    <message>
        <source>Compressor</source>
        <translation>Compresor</translation>
    </message>
    <message>
        <source>shell, feet and suction stub</source>
        <translation>carcasa, patas y tubo de succión</translation>
    </message>
    <message>
        <source>terminal cover and wiring</source>
        <translation>tapa de bornes y cableado</translation>
    </message>
    <message>
        <source>The cover and its gasket sit tight; the leads are clean, cool in colour and firm.</source>
        <translation>La tapa y su junta ajustan bien; los cables están limpios, sin tinte de calor y firmes.</translation>
    </message>
    <message>
        <source>The cover sits tight; a lead is faded or a little dusty, nothing is loose.</source>
        <translation>La tapa ajusta bien; un cable está descolorido o con algo de polvo, nada está flojo.</translation>
    </message>
    <message>
        <source>The gasket is cracked, a lead is stiff, or light discolouring from heat shows at the cover.</source>
        <translation>La junta está agrietada, un cable rígido, o hay un leve tinte de calor en la tapa.</translation>
    </message>
    <message>
        <source>The cover is loose or cracked, a lead is brittle or browned, or an oily film shows at the cover.</source>
        <translation>La tapa está floja o agrietada, un cable quebradizo o tostado, o hay una película de aceite en la tapa.</translation>
    </message>
    <message>
        <source>The cover is missing, a lead is burnt, or oil or a mark of arcing shows at the cover: keep the power off.</source>
        <translation>Falta la tapa, un cable está quemado, o hay aceite o marca de arco en la tapa: mantenga cortada la corriente.</translation>
    </message>
    <message>
        <source>mounts</source>
        <translation>apoyos</translation>
    </message>
    <message>
        <source>All mounts are whole and springy; the compressor stands level.</source>
        <translation>Todos los apoyos están enteros y elásticos; el compresor está nivelado.</translation>
    </message>
    <message>
        <source>The rubber is dull or has fine surface cracks; nothing has sunk.</source>
        <translation>La goma está apagada o con grietas finas en la superficie; nada se ha hundido.</translation>
    </message>
    <message>
        <source>A mount is cracked through the surface or one bolt is loose; the compressor still stands level.</source>
        <translation>Un apoyo está agrietado en la superficie o un tornillo flojo; el compresor sigue nivelado.</translation>
    </message>
    <message>
        <source>A mount is crushed, split or missing its bolt; the compressor leans or knocks.</source>
        <translation>Un apoyo está aplastado, rajado o sin tornillo; el compresor se inclina o golpea.</translation>
    </message>
    <message>
        <source>The compressor rests on metal, or its movement strains the tubes.</source>
        <translation>El compresor descansa sobre metal, o su movimiento fuerza los tubos.</translation>
    </message>
    <message>
        <source>No rust, or a few pinpoints: at most 0.03 % of the shell (ASTM D610 grade 9 or 10); no oil.</source>
        <translation>Sin óxido, o unos puntitos: como mucho el 0,03 % de la carcasa (ASTM D610, grado 9 o 10); sin aceite.</translation>
    </message>
    <message>
        <source>A few rust spots, most at the feet: at most 1 % of the shell (ASTM D610 grade 6 to 8).</source>
        <translation>Unos puntos de óxido, sobre todo en las patas: como mucho el 1 % de la carcasa (ASTM D610, grado 6 a 8).</translation>
    </message>
    <message>
        <source>Rust on up to 10 % of the shell (ASTM D610 grade 4 or 5), rough, with no flakes and no oil.</source>
        <translation>Óxido en hasta el 10 % de la carcasa (ASTM D610, grado 4 o 5), áspero, sin escamas ni aceite.</translation>
    </message>
    <message>
        <source>Rust on up to 33 % of the shell (ASTM D610 grade 2 or 3), flakes at the feet or suction stub, or an old oil mark.</source>
        <translation>Óxido en hasta el 33 % de la carcasa (ASTM D610, grado 2 o 3), escamas en las patas o el tubo de succión, o una marca vieja de aceite.</translation>
    </message>
    <message>
        <source>Rust on more than 33 % of the shell, deep pits at a tube stub, or fresh oil.</source>
        <translation>Óxido en más del 33 % de la carcasa, picaduras profundas en la salida de un tubo, o aceite fresco.</translation>
    </message>
    <message>
        <source>Measure the compressor current and hold it against the nameplate.</source>
        <translation>Mida la corriente del compresor y compárela con la placa.</translation>
    </message>
    <message>
        <source>Listen to the start: note humming, a second try, or a hard knock.</source>
        <translation>Escuche el arranque: anote un zumbido, un segundo intento o un golpe seco.</translation>
    </message>
    <message>
        <source>Have the insulation resistance measured by someone qualified, with the compressor isolated, and note its temperature.</source>
        <translation>Haga medir la resistencia de aislamiento por una persona competente, con el compresor aislado, y anote su temperatura.</translation>
    </message>
    <message>
        <source>Have the insulation resistance measured again with the same meter, and note the temperature.</source>
        <translation>Haga medir otra vez la resistencia de aislamiento con el mismo medidor, y anote la temperatura.</translation>
    </message>
    <message>
        <source>Listen to a cold start after the heater has done its hours.</source>
        <translation>Escuche un arranque en frío después de que la resistencia haya cumplido sus horas.</translation>
    </message>
    <message>
        <source>Grade the shell, feet and suction stub while they are dry; the terminal cover stays on.</source>
        <translation>Dé grado a la carcasa, las patas y el tubo de succión mientras están secos; la tapa de bornes se queda puesta.</translation>
    </message>
    <message>
        <source>burnt winding</source>
        <translation>devanado quemado</translation>
    </message>
    <message>
        <source>winding to ground</source>
        <translation>devanado derivado a tierra</translation>
    </message>
    <message>
        <source>worn valves or scrolls</source>
        <translation>válvulas o espirales gastadas</translation>
    </message>
    <message>
        <source>liquid in the compressor</source>
        <translation>líquido en el compresor</translation>
    </message>
    <message>
        <source>locked rotor</source>
        <translation>rotor bloqueado</translation>
    </message>
    <message>
        <source>The right charge, a clean coil, a working heater, a good contactor and capacitor, and a pause between starts.</source>
        <translation>La carga correcta, un serpentín limpio, una resistencia que funciona, un buen contactor y capacitor, y una pausa entre arranques.</translation>
    </message>
    <message>
        <source>middle of 12 to 15 years for hermetic air-cooled compressors, a consulting office&apos;s public table of average lives; ASHRAE&apos;s public summary gives 20 for reciprocating compressors, a dealer survey in ASHRAE Transactions 93-1 (1987) 8.8</source>
        <translation>mitad de 12 a 15 años para compresores herméticos enfriados por aire, tabla pública de vidas medias de una oficina de ingeniería; el resumen público de ASHRAE da 20 para compresores alternativos, una encuesta a vendedores en ASHRAE Transactions 93-1 (1987) 8,8</translation>
    </message>
    <message>
        <source>Reversing valve</source>
        <translation>Válvula inversora</translation>
    </message>
    <message>
        <source>body and coil</source>
        <translation>cuerpo y bobina</translation>
    </message>
    <message>
        <source>pilot tubes</source>
        <translation>tubos piloto</translation>
    </message>
    <message>
        <source>The small tubes are straight, held down and free of touching metal.</source>
        <translation>Los tubos pequeños están rectos, sujetos y sin tocar metal.</translation>
    </message>
    <message>
        <source>A tube is lightly bent or dulled, and touches nothing.</source>
        <translation>Un tubo está algo doblado o apagado, y no toca nada.</translation>
    </message>
    <message>
        <source>A tube is loose in its clip or touches another part; no groove yet.</source>
        <translation>Un tubo está suelto en su pinza o toca otra pieza; aún sin surco.</translation>
    </message>
    <message>
        <source>A groove or kink can be felt, or an old oil mark shows.</source>
        <translation>Se nota un surco o pliegue, o se ve una marca vieja de aceite.</translation>
    </message>
    <message>
        <source>A tube is worn nearly through or kinked shut, or oil comes back after wiping.</source>
        <translation>Un tubo está casi gastado o cerrado por un pliegue, o vuelve el aceite tras limpiar.</translation>
    </message>
    <message>
        <source>The body is clean and undented; the valve shifts at once in both directions.</source>
        <translation>El cuerpo está limpio y sin abolladuras; la válvula cambia enseguida en ambos sentidos.</translation>
    </message>
    <message>
        <source>Light tarnish or dust; the valve shifts at once.</source>
        <translation>Algo deslustrada o con polvo; la válvula cambia enseguida.</translation>
    </message>
    <message>
        <source>The shift is slow or noisy, or the coil&apos;s cover is cracked; both directions are still reached.</source>
        <translation>El cambio es lento o ruidoso, o la cubierta de la bobina está agrietada; aún se alcanzan ambos sentidos.</translation>
    </message>
    <message>
        <source>The valve needs a second try, or suction leaves it more than 3 K (5 °F) warmer than it came in.</source>
        <translation>La válvula necesita un segundo intento, o la succión sale más de 3 K (5 °F) más caliente de lo que entró.</translation>
    </message>
    <message>
        <source>The valve is stuck between or in one direction, its coil is burnt, or its body is dented or leaks.</source>
        <translation>La válvula está atascada a medias o en un sentido, su bobina quemada, o su cuerpo abollado o con fugas.</translation>
    </message>
    <message>
        <source>Let the unit change once between cooling and heating, and note whether the shift is prompt.</source>
        <translation>Haga que la unidad cambie una vez entre frío y calor, y anote si el cambio es inmediato.</translation>
    </message>
    <message>
        <source>Watch the shift to heating and at a defrost, and feel that all four lines follow.</source>
        <translation>Observe el cambio a calor y en un desescarche, y note al tacto que las cuatro líneas lo siguen.</translation>
    </message>
    <message>
        <source>Look at the pilot tubes and their clips.</source>
        <translation>Mire los tubos piloto y sus pinzas.</translation>
    </message>
    <message>
        <source>stuck slide</source>
        <translation>corredera atascada</translation>
    </message>
    <message>
        <source>leak from one side to the other inside</source>
        <translation>fuga interna de un lado al otro</translation>
    </message>
    <message>
        <source>burnt coil</source>
        <translation>bobina quemada</translation>
    </message>
    <message>
        <source>leaking pilot tube</source>
        <translation>tubo piloto con fuga</translation>
    </message>
    <message>
        <source>A clean circuit, pilot tubes held down, and nobody hitting the body.</source>
        <translation>Un circuito limpio, tubos piloto sujetos, y que nadie golpee el cuerpo.</translation>
    </message>
    <message>
        <source>Outdoor metering and check valve</source>
        <translation>Expansión exterior y válvula de retención</translation>
    </message>
    <message>
        <source>valve, bulb and distributor</source>
        <translation>válvula, bulbo y distribuidor</translation>
    </message>
    <message>
        <source>The bulb is clamped and insulated; frost spreads evenly over all circuits in heating.</source>
        <translation>El bulbo está sujeto y aislado; la escarcha se reparte por igual en todos los circuitos en calor.</translation>
    </message>
    <message>
        <source>The bulb&apos;s insulation is worn; frost is even.</source>
        <translation>El aislamiento del bulbo está gastado; la escarcha es pareja.</translation>
    </message>
    <message>
        <source>The clamp is loose or one circuit frosts later than the others.</source>
        <translation>La abrazadera está floja o un circuito se escarcha más tarde que los demás.</translation>
    </message>
    <message>
        <source>Frost stays on part of the coil, or a cold spot sits across the valve or its screen in cooling.</source>
        <translation>Queda escarcha en parte del serpentín, o hay un punto frío en la válvula o su filtro en frío.</translation>
    </message>
    <message>
        <source>The bulb has lost its charge, the valve or check is stuck, or a joint leaks.</source>
        <translation>El bulbo ha perdido su carga, la válvula o la retención está atascada, o una unión fuga.</translation>
    </message>
    <message>
        <source>In cooling, feel for a temperature drop across the check valve; there should be none to speak of.</source>
        <translation>En frío, busque al tacto una caída de temperatura en la válvula de retención; no debería haber ninguna apreciable.</translation>
    </message>
    <message>
        <source>In heating, look whether all circuits frost alike.</source>
        <translation>En calor, mire si todos los circuitos se escarchan por igual.</translation>
    </message>
    <message>
        <source>stuck check valve</source>
        <translation>válvula de retención atascada</translation>
    </message>
    <message>
        <source>blocked screen</source>
        <translation>filtro tapado</translation>
    </message>
    <message>
        <source>bulb that has lost its charge</source>
        <translation>bulbo que ha perdido su carga</translation>
    </message>
    <message>
        <source>A clean circuit and a bulb that stays clamped and insulated.</source>
        <translation>Un circuito limpio y un bulbo que sigue sujeto y aislado.</translation>
    </message>
    <message>
        <source>Filter drier</source>
        <translation>Filtro secador</translation>
    </message>
    <message>
        <source>shell</source>
        <translation>cuerpo</translation>
    </message>
    <message>
        <source>Paint is whole, the arrow points with the flow, both ends feel equally warm; rust at most 0.03 % (ASTM D610 grade 9 or 10).</source>
        <translation>La pintura está entera, la flecha sigue el flujo, los dos extremos se notan igual de templados; óxido como mucho en el 0,03 % (ASTM D610, grado 9 o 10).</translation>
    </message>
    <message>
        <source>A few rust spots, at most 1 % of the shell (ASTM D610 grade 6 to 8); both ends feel equally warm.</source>
        <translation>Unos puntos de óxido, como mucho el 1 % del cuerpo (ASTM D610, grado 6 a 8); los dos extremos se notan igual de templados.</translation>
    </message>
    <message>
        <source>Rust on up to 10 % of the shell (ASTM D610 grade 4 or 5), or one end 1 to 2 K (2 to 3 °F) colder than the other.</source>
        <translation>Óxido en hasta el 10 % del cuerpo (ASTM D610, grado 4 o 5), o un extremo de 1 a 2 K (2 a 3 °F) más frío que el otro.</translation>
    </message>
    <message>
        <source>Rust on up to 33 % of the shell (ASTM D610 grade 2 or 3), flakes, or a drop of more than 2 K (3 °F) from end to end.</source>
        <translation>Óxido en hasta el 33 % del cuerpo (ASTM D610, grado 2 o 3), escamas, o una caída de más de 2 K (3 °F) de un extremo al otro.</translation>
    </message>
    <message>
        <source>Rust on more than 33 % of the shell, deep pits, oil at an end, or frost on the outlet: it is blocked or near holing.</source>
        <translation>Óxido en más del 33 % del cuerpo, picaduras profundas, aceite en un extremo o escarcha en la salida: está tapado o a punto de perforarse.</translation>
    </message>
    <message>
        <source>Measure the temperature at both ends after 15 steady minutes.</source>
        <translation>Mida la temperatura en los dos extremos tras 15 minutos estables.</translation>
    </message>
    <message>
        <source>Grade the rust of the shell and touch up paint where the metal is sound and dry.</source>
        <translation>Dé grado al óxido del cuerpo y retoque la pintura donde el metal está sano y seco.</translation>
    </message>
    <message>
        <source>blocked</source>
        <translation>tapado</translation>
    </message>
    <message>
        <source>rusted through (steel shell outdoors)</source>
        <translation>perforado por el óxido (cuerpo de acero a la intemperie)</translation>
    </message>
    <message>
        <source>Paint on the shell, and a new drier whenever the circuit is opened.</source>
        <translation>Pintura en el cuerpo, y un secador nuevo siempre que se abra el circuito.</translation>
    </message>
    <message>
        <source>common practice, no source; changed whenever the circuit is opened</source>
        <translation>práctica común, sin fuente; se cambia siempre que se abre el circuito</translation>
    </message>
    <message>
        <source>Service valves and caps</source>
        <translation>Válvulas de servicio y tapones</translation>
    </message>
    <message>
        <source>stems, cores and caps</source>
        <translation>vástagos, obuses y tapones</translation>
    </message>
    <message>
        <source>Both valves are dry; every cap is there, with its seal, and tight.</source>
        <translation>Las dos válvulas están secas; están todos los tapones, con su junta, y apretados.</translation>
    </message>
    <message>
        <source>A cap is scuffed or its seal flattened, but tight and dry.</source>
        <translation>Un tapón está rozado o su junta aplastada, pero apretado y seco.</translation>
    </message>
    <message>
        <source>A cap or its seal is missing or cracked; the valve below is dry.</source>
        <translation>Falta o está agrietado un tapón o su junta; la válvula debajo está seca.</translation>
    </message>
    <message>
        <source>An old oil mark or a slow bubble shows at a core or stem, or a stem is rounded.</source>
        <translation>Se ve una marca vieja de aceite o una burbuja lenta en un obús o vástago, o un vástago está redondeado.</translation>
    </message>
    <message>
        <source>A core, stem or joint leaks, or a valve can no longer be closed.</source>
        <translation>Un obús, vástago o unión fuga, o una válvula ya no se puede cerrar.</translation>
    </message>
    <message>
        <source>After any gauge work, test the cores for bubbles and put caps with seals back on.</source>
        <translation>Tras usar el manómetro, busque burbujas en los obuses y vuelva a poner tapones con junta.</translation>
    </message>
    <message>
        <source>See that every cap is on and dry; try the valves with a leak detector only.</source>
        <translation>Vea que todos los tapones están puestos y secos; pruebe las válvulas solo con un detector de fugas.</translation>
    </message>
    <message>
        <source>leaking core</source>
        <translation>obús con fuga</translation>
    </message>
    <message>
        <source>missing cap</source>
        <translation>tapón que falta</translation>
    </message>
    <message>
        <source>rounded or leaking stem</source>
        <translation>vástago redondeado o con fuga</translation>
    </message>
    <message>
        <source>Metal caps with seals, and gauges connected as seldom as the readings allow.</source>
        <translation>Tapones de metal con junta, y manómetros conectados tan poco como permitan las lecturas.</translation>
    </message>
    <message>
        <source>Pressure switches and small tubing</source>
        <translation>Presostatos y tubería fina</translation>
    </message>
    <message>
        <source>rub points and joints</source>
        <translation>puntos de roce y uniones</translation>
    </message>
    <message>
        <source>Every tube is clipped and touches nothing; joints are clean and dry.</source>
        <translation>Cada tubo está sujeto y no toca nada; las uniones están limpias y secas.</translation>
    </message>
    <message>
        <source>A clip is loose or a tube dulled where it passes metal; nothing rubs.</source>
        <translation>Una pinza está floja o un tubo apagado donde pasa junto a metal; nada roza.</translation>
    </message>
    <message>
        <source>Two tubes, or a tube and a panel, touch; a bright line shows.</source>
        <translation>Dos tubos, o un tubo y un panel, se tocan; se ve una línea brillante.</translation>
    </message>
    <message>
        <source>A groove can be felt, a switch&apos;s wiring is brittle, or an old oil mark shows.</source>
        <translation>Se nota un surco, el cableado de un presostato está quebradizo, o se ve una marca vieja de aceite.</translation>
    </message>
    <message>
        <source>A tube is worn nearly through, oil comes back after wiping, or a switch does not act.</source>
        <translation>Un tubo está casi gastado, vuelve el aceite tras limpiar, o un presostato no actúa.</translation>
    </message>
    <message>
        <source>Look for tubes that touch; sleeve or clip them.</source>
        <translation>Busque tubos que se tocan; póngales manguito o pinza.</translation>
    </message>
    <message>
        <source>With the unit running, look for tubes that shake; then stop it and feel for grooves.</source>
        <translation>Con la unidad en marcha, busque tubos que tiemblan; después párela y busque surcos al tacto.</translation>
    </message>
    <message>
        <source>tube worn through by rubbing</source>
        <translation>tubo gastado por roce</translation>
    </message>
    <message>
        <source>switch stuck open</source>
        <translation>presostato pegado en abierto</translation>
    </message>
    <message>
        <source>Clips and sleeves, so that nothing touches.</source>
        <translation>Pinzas y manguitos, para que nada se toque.</translation>
    </message>
    <message>
        <source>Line-set insulation</source>
        <translation>Aislamiento de las líneas</translation>
    </message>
    <message>
        <source>run outdoors</source>
        <translation>tramo a la intemperie</translation>
    </message>
    <message>
        <source>last stretch to the unit and wall entry</source>
        <translation>último tramo hasta la unidad y paso de pared</translation>
    </message>
    <message>
        <source>Whole, closed at its seams and covered against the sun; no drip.</source>
        <translation>Entero, cerrado en sus juntas y cubierto contra el sol; sin goteo.</translation>
    </message>
    <message>
        <source>The surface is faded or powdery when rubbed; still whole and dry.</source>
        <translation>La superficie está descolorida o suelta polvo al frotar; sigue entero y seco.</translation>
    </message>
    <message>
        <source>Cracks, pecked spots or an open seam; up to 10 % of the length is bare or damp.</source>
        <translation>Grietas, picotazos o una junta abierta; hasta el 10 % del largo está desnudo o húmedo.</translation>
    </message>
    <message>
        <source>Up to a third of the length is bare, soaked or hanging, and the line drips there.</source>
        <translation>Hasta un tercio del largo está desnudo, empapado o colgando, y la línea gotea ahí.</translation>
    </message>
    <message>
        <source>More than a third is missing or soaked, or its water runs onto the accumulator or the base pan.</source>
        <translation>Falta o está empapado más de un tercio, o su agua cae sobre el acumulador o la bandeja base.</translation>
    </message>
    <message>
        <source>While the unit cools, find where the line sweats or drips, and note the missing length.</source>
        <translation>Mientras la unidad enfría, busque dónde la línea suda o gotea, y anote el largo que falta.</translation>
    </message>
    <message>
        <source>Replace what is missing while it is dry, and cover it against the sun; tape alone is not enough.</source>
        <translation>Reponga lo que falta mientras está seco y cúbralo contra el sol; la cinta sola no basta.</translation>
    </message>
    <message>
        <source>powdered by the sun</source>
        <translation>hecho polvo por el sol</translation>
    </message>
    <message>
        <source>soaked</source>
        <translation>empapado</translation>
    </message>
    <message>
        <source>gaps</source>
        <translation>huecos</translation>
    </message>
    <message>
        <source>pecked by birds</source>
        <translation>picoteado por pájaros</translation>
    </message>
    <message>
        <source>A cover that keeps sun and rain off, with closed seams.</source>
        <translation>Una cubierta que aparte el sol y la lluvia, con juntas cerradas.</translation>
    </message>
    <message>
        <source>common practice, no source, unprotected outdoors; ASHRAE&apos;s public summary gives 20 for moulded insulation</source>
        <translation>práctica común, sin fuente, sin protección a la intemperie; el resumen público de ASHRAE da 20 para aislamiento moldeado</translation>
    </message>
    <message>
        <source>outdoor temperature</source>
        <translation>temperatura exterior</translation>
    </message>
    <message>
        <source>In the shade, 30 cm (1 ft) from where the coil draws its air.</source>
        <translation>A la sombra, a 30 cm (1 ft) de donde el serpentín toma el aire.</translation>
    </message>
    <message>
        <source>return air temperature</source>
        <translation>temperatura del aire de retorno</translation>
    </message>
    <message>
        <source>In the return air just before the indoor coil.</source>
        <translation>En el aire de retorno, justo antes del serpentín interior.</translation>
    </message>
    <message>
        <source>return air wet bulb</source>
        <translation>bulbo húmedo del aire de retorno</translation>
    </message>
    <message>
        <source>At the same place as the return air temperature; it is never above it.</source>
        <translation>En el mismo lugar que la temperatura del aire de retorno; nunca la supera.</translation>
    </message>
    <message>
        <source>supply air temperature</source>
        <translation>temperatura del aire de impulsión</translation>
    </message>
    <message>
        <source>Average over the supply duct, out of sight of the coil.</source>
        <translation>Media sobre el conducto de impulsión, sin ver el serpentín.</translation>
    </message>
    <message>
        <source>suction pressure</source>
        <translation>presión de succión</translation>
    </message>
    <message>
        <source>At the suction service port, after 15 steady minutes; only when it is needed.</source>
        <translation>En la toma de servicio de succión, tras 15 minutos estables; solo cuando hace falta.</translation>
    </message>
    <message>
        <source>suction line temperature</source>
        <translation>temperatura de la línea de succión</translation>
    </message>
    <message>
        <source>On the suction line at the same spot as the pressure, insulated from the air.</source>
        <translation>En la línea de succión, en el mismo punto que la presión, aislado del aire.</translation>
    </message>
    <message>
        <source>liquid pressure</source>
        <translation>presión de líquido</translation>
    </message>
    <message>
        <source>At the liquid service port, after 15 steady minutes; only when it is needed.</source>
        <translation>En la toma de servicio de líquido, tras 15 minutos estables; solo cuando hace falta.</translation>
    </message>
    <message>
        <source>liquid line temperature</source>
        <translation>temperatura de la línea de líquido</translation>
    </message>
    <message>
        <source>On the liquid line at the same spot as the pressure.</source>
        <translation>En la línea de líquido, en el mismo punto que la presión.</translation>
    </message>
    <message>
        <source>discharge line temperature</source>
        <translation>temperatura de la línea de descarga</translation>
    </message>
    <message>
        <source>On the discharge line 15 cm (6 in) from the compressor; it burns.</source>
        <translation>En la línea de descarga a 15 cm (6 in) del compresor; quema.</translation>
    </message>
    <message>
        <source>compressor current</source>
        <translation>corriente del compresor</translation>
    </message>
    <message>
        <source>With a clamp around one compressor lead at a time, by someone qualified.</source>
        <translation>Con una pinza en un cable del compresor cada vez, por una persona competente.</translation>
    </message>
    <message>
        <source>fan motor current</source>
        <translation>corriente del motor del ventilador</translation>
    </message>
    <message>
        <source>With a clamp around one fan lead, by someone qualified.</source>
        <translation>Con una pinza en un cable del ventilador, por una persona competente.</translation>
    </message>
    <message>
        <source>line voltage</source>
        <translation>tensión de línea</translation>
    </message>
    <message>
        <source>At the contactor with the unit running, by someone qualified.</source>
        <translation>En el contactor con la unidad en marcha, por una persona competente.</translation>
    </message>
    <message>
        <source>Out of circuit and discharged, by someone qualified, with the same meter as last time.</source>
        <translation>Fuera del circuito y descargado, por una persona competente, con el mismo medidor que la última vez.</translation>
    </message>
    <message>
        <source>insulation resistance</source>
        <translation>resistencia de aislamiento</translation>
    </message>
    <message>
        <source>Compressor isolated and not in vacuum, 60 seconds, by someone qualified; note its temperature.</source>
        <translation>Compresor aislado y no en vacío, 60 segundos, por una persona competente; anote su temperatura.</translation>
    </message>
    <message>
        <source>insulation resistance, 60 s over 30 s</source>
        <translation>resistencia de aislamiento, 60 s entre 30 s</translation>
    </message>
    <message>
        <source>The 60-second value of insulation resistance divided by the 30-second one.</source>
        <translation>El valor de la resistencia de aislamiento a los 60 segundos dividido por el de los 30.</translation>
    </message>
    <message>
        <source>compressor shell temperature</source>
        <translation>temperatura de la carcasa del compresor</translation>
    </message>
    <message>
        <source>Low on the shell, before any work on the power, after the heater has been on for 12 hours.</source>
        <translation>En la parte baja de la carcasa, antes de tocar la corriente, tras 12 horas con la resistencia conectada.</translation>
    </message>
    <message>
        <source>crankcase heater current</source>
        <translation>corriente de la resistencia de cárter</translation>
    </message>
    <message>
        <source>With a clamp around one heater lead, by someone qualified.</source>
        <translation>Con una pinza en un cable de la resistencia, por una persona competente.</translation>
    </message>
    <message>
        <source>temperature drop across the drier</source>
        <translation>caída de temperatura en el secador</translation>
    </message>
    <message>
        <source>Inlet less outlet, after 15 steady minutes.</source>
        <translation>Entrada menos salida, tras 15 minutos estables.</translation>
    </message>
    <message>
        <source>wall thickness</source>
        <translation>espesor de pared</translation>
    </message>
    <message>
        <source>At the marked spot, loose scale off, dry; the smallest of three readings; note how the gauge was set.</source>
        <translation>En el punto marcado, sin cascarilla suelta, en seco; la menor de tres lecturas; anote cómo se ajustó el medidor.</translation>
    </message>
    <message>
        <source>external static pressure</source>
        <translation>presión estática externa</translation>
    </message>
    <message>
        <source>Across the air handler, filter in place, fan at full speed.</source>
        <translation>Entre los dos lados de la unidad interior, con el filtro puesto y el ventilador al máximo.</translation>
    </message>
    <message>
        <source>contactor voltage drop</source>
        <translation>caída de tensión en el contactor</translation>
    </message>
    <message>
        <source>Across each closed pole under load, by someone qualified; the larger value.</source>
        <translation>En cada polo cerrado con carga, por una persona competente; el valor mayor.</translation>
    </message>
    <message>
        <source>ground continuity</source>
        <translation>continuidad de tierra</translation>
    </message>
    <message>
        <source>From the ground lug to bare metal of the cabinet, by someone qualified.</source>
        <translation>Del terminal de tierra al metal desnudo de la envolvente, por una persona competente.</translation>
    </message>
    <message>
        <source>open share of the coil face</source>
        <translation>parte libre de la cara del serpentín</translation>
    </message>
    <message>
        <source>The clean share of the worst face, by eye, before washing.</source>
        <translation>La parte limpia de la peor cara, a ojo, antes de lavar.</translation>
    </message>
    <message>
        <source>pad slope</source>
        <translation>inclinación de la losa</translation>
    </message>
    <message>
        <source>With a level on the pad, both ways; the larger value. A quarter inch per foot is 2 %.</source>
        <translation>Con un nivel sobre la losa, en ambos sentidos; el valor mayor. Un cuarto de pulgada por pie es el 2 %.</translation>
    </message>
    <message>
        <source>height above ground</source>
        <translation>altura sobre el suelo</translation>
    </message>
    <message>
        <source>From the ground to the underside of the unit, at its lowest corner.</source>
        <translation>Del suelo a la parte inferior de la unidad, en su esquina más baja.</translation>
    </message>
    <message>
        <source>free space around the unit</source>
        <translation>espacio libre alrededor de la unidad</translation>
    </message>
    <message>
        <source>From the coil to the nearest thing, at the tightest side.</source>
        <translation>Del serpentín al objeto más cercano, por el lado más estrecho.</translation>
    </message>
    <message>
        <source>vibration</source>
        <translation>vibración</translation>
    </message>
    <message>
        <source>On the base beside a compressor foot; compare with the last value.</source>
        <translation>En la base junto a una pata del compresor; compare con el último valor.</translation>
    </message>
    <message>
        <source>defrost duration</source>
        <translation>duración del desescarche</translation>
    </message>
    <message>
        <source>From the shift into defrost until the fan starts again.</source>
        <translation>Desde el cambio a desescarche hasta que el ventilador arranca de nuevo.</translation>
    </message>
    <message>
        <source>coil temperature when defrost ends</source>
        <translation>temperatura del serpentín al terminar el desescarche</translation>
    </message>
    <message>
        <source>On the tube beside the coil sensor, when the valve shifts back.</source>
        <translation>En el tubo junto al sensor del serpentín, cuando la válvula vuelve.</translation>
    </message>
    <message>
        <source>suction rise across the reversing valve</source>
        <translation>aumento de la succión en la válvula inversora</translation>
    </message>
    <message>
        <source>Suction line leaving less entering the valve, 15 cm (6 in) away from it.</source>
        <translation>Línea de succión a la salida menos a la entrada de la válvula, a 15 cm (6 in) de ella.</translation>
    </message>
    <message>
        <source>split air conditioner</source>
        <translation>aire acondicionado split</translation>
    </message>
    <message>
        <source>heat pump</source>
        <translation>bomba de calor</translation>
    </message>
    <message>
        <source>What is put into a unit within this time of a recovery is the recovered charge put back, up to its mass; only what goes in beyond it makes up for a leak.</source>
        <translation>Lo que entra en una unidad dentro de este plazo tras una recuperación es la carga recuperada que vuelve, hasta su masa; solo lo que pasa de ella repone una fuga.</translation>
    </message>
    <message>
        <source>A second addition of refrigerant within this time is flagged; without another one for this long the flag clears.</source>
        <translation>Una segunda adición de refrigerante en este plazo se señala; sin otra durante este tiempo la señal se retira.</translation>
    </message>
    <message>
        <source>More than this share of the full charge added within one season is flagged.</source>
        <translation>Se señala si en una temporada se añade más de esta parte de la carga completa.</translation>
    </message>
    <message>
        <source>Additions within this time are of one season.</source>
        <translation>Las adiciones dentro de este plazo son de una misma temporada.</translation>
    </message>
    <message>
        <source>alkyd primer</source>
        <translation>imprimación alquídica</translation>
    </message>
    <message>
        <source>common practice, no source: the data sheet on the tin comes first</source>
        <translation>práctica común, sin fuente: manda la ficha técnica del envase</translation>
    </message>
    <message>
        <source>alkyd enamel</source>
        <translation>esmalte alquídico</translation>
    </message>
    <message>
        <source>rust converter, water-based</source>
        <translation>convertidor de óxido, al agua</translation>
    </message>
    <message>
        <source>common practice, no source: the data sheet on the tin comes first; water-based products depart from the doubling rule</source>
        <translation>práctica común, sin fuente: manda la ficha técnica del envase; los productos al agua se apartan de la regla de la duplicación</translation>
    </message>
    <message>
        <source>epoxy, two-part</source>
        <translation>epoxi de dos componentes</translation>
    </message>
    <message>
        <source>zinc-rich primer</source>
        <translation>imprimación rica en zinc</translation>
    </message>
    <message>
        <source>bitumen coating</source>
        <translation>revestimiento bituminoso</translation>
    </message>
    <message>
        <source>corrosion-inhibiting wax film</source>
        <translation>película de cera anticorrosiva</translation>
    </message>
    <message>
        <source>no rule for so small a unit; an early warning</source>
        <translation>sin norma para una unidad tan pequeña; un aviso temprano</translation>
    </message>
    <message>
        <source>the figure of 40 CFR 82.157 for comfort cooling, taken over as advice; common practice, no source</source>
        <translation>la cifra de 40 CFR 82.157 para climatización, tomada como consejo; práctica común, sin fuente</translation>
    </message>
    <message>
        <source>40 CFR 82.157, ozone-depleting refrigerant, 50 lb or more</source>
        <translation>40 CFR 82.157, refrigerante que agota el ozono, 50 lb o más</translation>
    </message>
    <message>
        <source>40 CFR 82.157; which refrigerants are class I or II: from memory</source>
        <translation>40 CFR 82.157; qué refrigerantes son de clase I o II: de memoria</translation>
    </message>
    <message>
        <source>40 CFR 84.106, HFC, 15 lb or more; residential and light commercial units are exempt</source>
        <translation>40 CFR 84.106, HFC, 15 lb o más; exentas las unidades residenciales y comerciales ligeras</translation>
    </message>
    <message>
        <source>40 CFR part 84, subpart C; the exemption in 84.106(a) and which refrigerants have a GWP above 53: from memory</source>
        <translation>40 CFR parte 84, subparte C; la exención de 84.106(a) y qué refrigerantes tienen un PCA superior a 53: de memoria</translation>
    </message>
    <message>
        <source>40 CFR 84.106, HFC, 15 lb or more</source>
        <translation>40 CFR 84.106, HFC, 15 lb o más</translation>
    </message>
    <message>
        <source>40 CFR part 84, subpart C; which refrigerants have a GWP above 53: from memory</source>
        <translation>40 CFR parte 84, subparte C; qué refrigerantes tienen un PCA superior a 53: de memoria</translation>
    </message>
    <message>
        <source>the figure of 40 CFR 82.157 for commercial refrigeration, taken over as advice; common practice, no source</source>
        <translation>la cifra de 40 CFR 82.157 para refrigeración comercial, tomada como consejo; práctica común, sin fuente</translation>
    </message>
    <message>
        <source>the figure of 40 CFR 82.157 for industrial process refrigeration, taken over as advice; common practice, no source</source>
        <translation>la cifra de 40 CFR 82.157 para refrigeración de procesos industriales, tomada como consejo; práctica común, sin fuente</translation>
    </message>
    <message>
        <source>outside diameter of the accumulator</source>
        <translation>diámetro exterior del acumulador</translation>
    </message>
    <message>
        <source>line voltage 1 to 2 (three-phase)</source>
        <translation>tensión de red 1 a 2 (trifásica)</translation>
    </message>
    <message>
        <source>At the contactor while the unit runs, all three within a minute; qualified people only.</source>
        <translation>En el contactor con la unidad en marcha, las tres en un minuto; solo personas competentes.</translation>
    </message>
    <message>
        <source>line voltage 2 to 3 (three-phase)</source>
        <translation>tensión de red 2 a 3 (trifásica)</translation>
    </message>
    <message>
        <source>line voltage 3 to 1 (three-phase)</source>
        <translation>tensión de red 3 a 1 (trifásica)</translation>
    </message>
    <message>
        <source>rusted share</source>
        <translation>parte oxidada</translation>
    </message>
    <message>
        <source>Share of this zone&apos;s surface that has rusted itself; stains that ran down from elsewhere don&apos;t count.</source>
        <translation>Parte de la superficie de esta zona que está oxidada; las manchas que han escurrido de otro sitio no cuentan.</translation>
    </message>
    <message>
        <source>Superheat may be this far from its target; twice as far is past the limit.</source>
        <translation>El recalentamiento puede apartarse esto de su objetivo; el doble pasa del límite.</translation>
    </message>
    <message>
        <source>California Title 24 (2008), Residential Appendix RA3.2: within 5 °F of the target</source>
        <translation>California, Título 24 (2008), apéndice residencial RA3.2: a menos de 5 °F del objetivo</translation>
    </message>
    <message>
        <source>With a thermostatic valve superheat is at least this, where the maker gives no other.</source>
        <translation>Con válvula termostática, el recalentamiento es al menos este, si el fabricante no da otro.</translation>
    </message>
    <message>
        <source>California Title 24 (2008), Residential Appendix RA3.2: 4 to 25 °F</source>
        <translation>California, Título 24 (2008), apéndice residencial RA3.2: de 4 a 25 °F</translation>
    </message>
    <message>
        <source>With a thermostatic valve superheat is at most this, where the maker gives no other.</source>
        <translation>Con válvula termostática, el recalentamiento es como mucho este, si el fabricante no da otro.</translation>
    </message>
    <message>
        <source>Subcooling may be this far from its target; twice as far is past the limit.</source>
        <translation>El subenfriamiento puede apartarse esto de su objetivo; el doble pasa del límite.</translation>
    </message>
    <message>
        <source>California Title 24 (2008), Residential Appendix RA3.2: within 3 °F of the target</source>
        <translation>California, Título 24 (2008), apéndice residencial RA3.2: a menos de 3 °F del objetivo</translation>
    </message>
    <message>
        <source>With a valve subcooling is usually at least this, where the nameplate asks for none.</source>
        <translation>Con válvula, el subenfriamiento suele ser al menos este, si la placa no pide otro.</translation>
    </message>
    <message>
        <source>common practice, no source: 8 to 14 °F</source>
        <translation>práctica común, sin fuente: de 8 a 14 °F</translation>
    </message>
    <message>
        <source>With a valve subcooling is usually at most this, where the nameplate asks for none.</source>
        <translation>Con válvula, el subenfriamiento suele ser como mucho este, si la placa no pide otro.</translation>
    </message>
    <message>
        <source>Colder outdoors, superheat and subcooling do not tell the charge.</source>
        <translation>Con más frío fuera, el recalentamiento y el subenfriamiento no dicen la carga.</translation>
    </message>
    <message>
        <source>California Title 24 (2008), Residential Appendix RA3.2: 55 °F</source>
        <translation>California, Título 24 (2008), apéndice residencial RA3.2: 55 °F</translation>
    </message>
    <message>
        <source>The refrigerant condenses at least this much above the outdoor air (efficient units: 10 to 20 °F).</source>
        <translation>El refrigerante condensa al menos esto por encima del aire exterior (unidades eficientes: de 10 a 20 °F).</translation>
    </message>
    <message>
        <source>The refrigerant condenses at most this much above the outdoor air.</source>
        <translation>El refrigerante condensa como mucho esto por encima del aire exterior.</translation>
    </message>
    <message>
        <source>mechanical engineering handbook, air conditioning and refrigeration: 20 to 30 °F for comfort cooling</source>
        <translation>manual de ingeniería mecánica, climatización y refrigeración: de 20 a 30 °F en climatización</translation>
    </message>
    <message>
        <source>Further above the outdoor air than this is past the limit.</source>
        <translation>Más por encima del aire exterior pasa del límite.</translation>
    </message>
    <message>
        <source>common practice, no source: 35 °F</source>
        <translation>práctica común, sin fuente: 35 °F</translation>
    </message>
    <message>
        <source>The refrigerant boils about this much below the return air, at usual airflow.</source>
        <translation>El refrigerante hierve más o menos esto por debajo del aire de retorno, con el caudal usual.</translation>
    </message>
    <message>
        <source>common practice, no source: 35 °F at 400 cfm per ton</source>
        <translation>práctica común, sin fuente: 35 °F con 400 cfm por tonelada</translation>
    </message>
    <message>
        <source>So far from that is still usual.</source>
        <translation>Apartarse esto todavía es usual.</translation>
    </message>
    <message>
        <source>common practice, no source: 5 °F</source>
        <translation>práctica común, sin fuente: 5 °F</translation>
    </message>
    <message>
        <source>Further from that is past the limit.</source>
        <translation>Apartarse más pasa del límite.</translation>
    </message>
    <message>
        <source>common practice, no source: 10 °F</source>
        <translation>práctica común, sin fuente: 10 °F</translation>
    </message>
    <message>
        <source>The drop from return to supply air may be this far from its target.</source>
        <translation>La caída del aire de retorno al de impulsión puede apartarse esto de su objetivo.</translation>
    </message>
    <message>
        <source>California Title 24 (2008), Residential Appendix RA3.2: 3 °F</source>
        <translation>California, Título 24 (2008), apéndice residencial RA3.2: 3 °F</translation>
    </message>
    <message>
        <source>Further from that target is past the limit.</source>
        <translation>Apartarse más de ese objetivo pasa del límite.</translation>
    </message>
    <message>
        <source>California Title 24 (2008), Residential Appendix RA3.2: 4 °F for a verifier</source>
        <translation>California, Título 24 (2008), apéndice residencial RA3.2: 4 °F para un verificador</translation>
    </message>
    <message>
        <source>A capacitor may be this far from its label.</source>
        <translation>Un capacitor puede apartarse esto de su etiqueta.</translation>
    </message>
    <message>
        <source>usual on labels; common practice, no source</source>
        <translation>usual en las etiquetas; práctica común, sin fuente</translation>
    </message>
    <message>
        <source>A capacitor further from its label than this is replaced.</source>
        <translation>Un capacitor más lejos de su etiqueta se cambia.</translation>
    </message>
    <message>
        <source>A compressor draws at least this share of its rated load current.</source>
        <translation>Un compresor consume al menos esta parte de su corriente nominal.</translation>
    </message>
    <message>
        <source>A compressor that draws more than this share of its rated load current is past the limit.</source>
        <translation>Un compresor que consume más que esta parte de su corriente nominal pasa del límite.</translation>
    </message>
    <message>
        <source>A fan motor draws at least this share of its full load current.</source>
        <translation>Un motor de ventilador consume al menos esta parte de su corriente a plena carga.</translation>
    </message>
    <message>
        <source>A fan motor that draws more than this share of its full load current is past the limit.</source>
        <translation>Un motor de ventilador que consume más que esta parte de su corriente a plena carga pasa del límite.</translation>
    </message>
    <message>
        <source>The line voltage may be this far from the nameplate&apos;s.</source>
        <translation>La tensión de red puede apartarse esto de la de la placa.</translation>
    </message>
    <message>
        <source>unit data sheets (460 V: 414 to 506 V)</source>
        <translation>hojas de datos de unidades (460 V: de 414 a 506 V)</translation>
    </message>
    <message>
        <source>So near to that edge it is watched.</source>
        <translation>Tan cerca de ese límite, se vigila.</translation>
    </message>
    <message>
        <source>Three-phase voltages differ from their mean by at most this.</source>
        <translation>Las tensiones trifásicas se apartan de su media como mucho esto.</translation>
    </message>
    <message>
        <source>NEMA MG-1</source>
        <translation>NEMA MG-1</translation>
    </message>
    <message>
        <source>Further from their mean is past the limit of makers and the trade.</source>
        <translation>Apartarse más de su media pasa del límite de los fabricantes y del oficio.</translation>
    </message>
    <message>
        <source>unit data sheets; trade association&apos;s service manual</source>
        <translation>hojas de datos de unidades; manual de servicio de una asociación del oficio</translation>
    </message>
    <message>
        <source>A sound compressor winding has at least this insulation resistance.</source>
        <translation>Un bobinado de compresor sano tiene al menos esta resistencia de aislamiento.</translation>
    </message>
    <message>
        <source>A winding below this is looked into.</source>
        <translation>Un bobinado por debajo de esto se investiga.</translation>
    </message>
    <message>
        <source>After 60 seconds a sound winding has this many times the insulation resistance of 30 seconds.</source>
        <translation>A los 60 segundos, un bobinado sano tiene estas veces la resistencia de aislamiento de los 30 segundos.</translation>
    </message>
    <message>
        <source>insulation testing guide of a trade firm: 1.4 to 1.6 good, 1.0 to 1.35 questionable</source>
        <translation>guía de ensayos de aislamiento de una empresa del oficio: de 1,4 a 1,6 bueno, de 1,0 a 1,35 dudoso</translation>
    </message>
    <message>
        <source>Below this the winding is past the limit.</source>
        <translation>Por debajo de esto, el bobinado pasa del límite.</translation>
    </message>
    <message>
        <source>With its heater on for 12 hours the compressor shell is warmer than the coldest part by at least this.</source>
        <translation>Con la resistencia conectada 12 horas, la carcasa del compresor está al menos esto más caliente que la parte más fría.</translation>
    </message>
    <message>
        <source>hermetic compressor service handbook: 10 °F</source>
        <translation>manual de servicio de compresores herméticos: 10 °F</translation>
    </message>
    <message>
        <source>Below this the heater does not work.</source>
        <translation>Por debajo de esto, la resistencia no funciona.</translation>
    </message>
    <message>
        <source>A discharge line is usually no hotter than this.</source>
        <translation>Una línea de descarga no suele estar más caliente que esto.</translation>
    </message>
    <message>
        <source>common practice, no source: 225 °F</source>
        <translation>práctica común, sin fuente: 225 °F</translation>
    </message>
    <message>
        <source>A discharge line hotter than this is past the limit.</source>
        <translation>Una línea de descarga más caliente pasa del límite.</translation>
    </message>
    <message>
        <source>common practice, no source: 250 °F</source>
        <translation>práctica común, sin fuente: 250 °F</translation>
    </message>
    <message>
        <source>Across a clean drier the temperature drops by at most this.</source>
        <translation>En un secador limpio la temperatura cae como mucho esto.</translation>
    </message>
    <message>
        <source>common practice, no source: 2 °F</source>
        <translation>práctica común, sin fuente: 2 °F</translation>
    </message>
    <message>
        <source>A drier with more than this is past the limit.</source>
        <translation>Un secador con más que esto pasa del límite.</translation>
    </message>
    <message>
        <source>common practice, no source: 3 °F</source>
        <translation>práctica común, sin fuente: 3 °F</translation>
    </message>
    <message>
        <source>Across a contactor&apos;s pole drops at most this.</source>
        <translation>En un polo del contactor caen como mucho estos voltios.</translation>
    </message>
    <message>
        <source>From cabinet to grounding conductor there is at most this.</source>
        <translation>Del gabinete al conductor de tierra hay como mucho esto.</translation>
    </message>
    <message>
        <source>The suction gas warms by at most this through the reversing valve.</source>
        <translation>El gas de succión se calienta como mucho esto al pasar por la válvula inversora.</translation>
    </message>
    <message>
        <source>common practice, no source: 3 to 5 °F</source>
        <translation>práctica común, sin fuente: de 3 a 5 °F</translation>
    </message>
    <message>
        <source>More than this is past the limit.</source>
        <translation>Más que esto pasa del límite.</translation>
    </message>
    <message>
        <source>Where the nameplate gives none, external static pressure is at most this.</source>
        <translation>Si la placa no da ninguna, la presión estática externa es como mucho esta.</translation>
    </message>
    <message>
        <source>common practice, no source: 0.5 in. w.c.</source>
        <translation>práctica común, sin fuente: 0,5 in. w.c.</translation>
    </message>
    <message>
        <source>common practice, no source: 0.8 in. w.c.</source>
        <translation>práctica común, sin fuente: 0,8 in. w.c.</translation>
    </message>
    <message>
        <source>Painted steel with more rust than this is due for its first larger maintenance.</source>
        <translation>Al acero pintado con más óxido que esto le toca su primer mantenimiento mayor.</translation>
    </message>
    <message>
        <source>ISO 12944-1 and ISO 4628-3, Ri3; from memory</source>
        <translation>ISO 12944-1 e ISO 4628-3, Ri3; de memoria</translation>
    </message>
    <message>
        <source>With more rust than this the wall is measured, not only looked at.</source>
        <translation>Con más óxido que esto, la pared se mide, no solo se mira.</translation>
    </message>
    <message>
        <source>ours, at ASTM D610 grade 4; common practice, no source</source>
        <translation>valor nuestro, en el grado 4 de ASTM D610; práctica común, sin fuente</translation>
    </message>
    <message>
        <source>A wall with fewer years left than this is watched.</source>
        <translation>Una pared a la que quedan menos años se vigila.</translation>
    </message>
    <message>
        <source>API 510, inspection interval of short lives; from memory</source>
        <translation>API 510, intervalo de inspección de vidas cortas; de memoria</translation>
    </message>
    <message>
        <source>Where neither the nameplate nor the vessel&apos;s size says which wall must be left: this share of the first reading.</source>
        <translation>Si ni la placa ni el tamaño del recipiente dicen qué pared debe quedar: esta parte de la primera lectura.</translation>
    </message>
    <message>
        <source>A shut-off unit may get this warm; the refrigerant&apos;s pressure then is what the vessel must hold.</source>
        <translation>Una unidad parada puede llegar a esta temperatura; la presión del refrigerante a ella es la que el recipiente debe aguantar.</translation>
    </message>
    <message>
        <source>ours: 120 °F; common practice, no source</source>
        <translation>valor nuestro: 120 °F; práctica común, sin fuente</translation>
    </message>
    <message>
        <source>Stress allowed in the vessel&apos;s steel.</source>
        <translation>Tensión admisible en el acero del recipiente.</translation>
    </message>
    <message>
        <source>ASME Section II-D, plain carbon steel; from memory</source>
        <translation>ASME, sección II-D, acero al carbono; de memoria</translation>
    </message>
    <message>
        <source>A welded joint counts for this share of the plate.</source>
        <translation>Una unión soldada vale esta parte de la chapa.</translation>
    </message>
    <message>
        <source>ASME Section VIII-1, UW-12, spot radiography</source>
        <translation>ASME, sección VIII-1, UW-12, radiografía por puntos</translation>
    </message>
    <message>
        <source>ANSI/ASHRAE 34, as listed in a public table</source>
        <translation>ANSI/ASHRAE 34, según una tabla pública</translation>
    </message>
    <message>
        <source>IPCC Fourth Assessment Report (2007)</source>
        <translation>IPCC, Cuarto Informe de Evaluación (2007)</translation>
    </message>
    <message>
        <source>IPCC Fifth Assessment Report (2013)</source>
        <translation>IPCC, Quinto Informe de Evaluación (2013)</translation>
    </message>
    <message>
        <source>IPCC Sixth Assessment Report (2021)</source>
        <translation>IPCC, Sexto Informe de Evaluación (2021)</translation>
    </message>
    <message>
        <source>Kamei, Beyerlein and Jacobsen (1995), Int. J. Thermophys. 16</source>
        <translation>Kamei, Beyerlein y Jacobsen (1995), Int. J. Thermophys. 16</translation>
    </message>
    <message>
        <source>published short equation, within 0.018 % of the equation of state of Kamei, Beyerlein and Jacobsen (1995), Int. J. Thermophys. 16</source>
        <translation>ecuación corta publicada, con una diferencia de hasta el 0,018 % de la ecuación de estado de Kamei, Beyerlein y Jacobsen (1995), Int. J. Thermophys. 16</translation>
    </message>
    <message>
        <source>Tillner-Roth and Yokozeki (1997), J. Phys. Chem. Ref. Data 26</source>
        <translation>Tillner-Roth y Yokozeki (1997), J. Phys. Chem. Ref. Data 26</translation>
    </message>
    <message>
        <source>published short equation, within 0.0013 % of the equation of state of Tillner-Roth and Yokozeki (1997), J. Phys. Chem. Ref. Data 26</source>
        <translation>ecuación corta publicada, con una diferencia de hasta el 0,0013 % de la ecuación de estado de Tillner-Roth y Yokozeki (1997), J. Phys. Chem. Ref. Data 26</translation>
    </message>
    <message>
        <source>Tillner-Roth and Baehr (1994), J. Phys. Chem. Ref. Data 23</source>
        <translation>Tillner-Roth y Baehr (1994), J. Phys. Chem. Ref. Data 23</translation>
    </message>
    <message>
        <source>published short equation, within 0.0035 % of the equation of state of Tillner-Roth and Baehr (1994), J. Phys. Chem. Ref. Data 23</source>
        <translation>ecuación corta publicada, con una diferencia de hasta el 0,0035 % de la ecuación de estado de Tillner-Roth y Baehr (1994), J. Phys. Chem. Ref. Data 23</translation>
    </message>
    <message>
        <source>IPCC Fourth Assessment Report (2007), from memory</source>
        <translation>IPCC, Cuarto Informe de Evaluación (2007), de memoria</translation>
    </message>
    <message>
        <source>Lemmon, McLinden and Wagner (2009), J. Chem. Eng. Data 54</source>
        <translation>Lemmon, McLinden y Wagner (2009), J. Chem. Eng. Data 54</translation>
    </message>
    <message>
        <source>published short equation, within 0.012 % of the equation of state of Lemmon, McLinden and Wagner (2009), J. Chem. Eng. Data 54</source>
        <translation>ecuación corta publicada, con una diferencia de hasta el 0,012 % de la ecuación de estado de Lemmon, McLinden y Wagner (2009), J. Chem. Eng. Data 54</translation>
    </message>
    <message>
        <source>IPCC Fourth Assessment Report (2007), mass-weighted mean of the components</source>
        <translation>IPCC, Cuarto Informe de Evaluación (2007), media de los componentes ponderada por masa</translation>
    </message>
    <message>
        <source>IPCC Fifth Assessment Report (2013), mass-weighted mean of the components</source>
        <translation>IPCC, Quinto Informe de Evaluación (2013), media de los componentes ponderada por masa</translation>
    </message>
    <message>
        <source>IPCC Sixth Assessment Report (2021), mass-weighted mean of the components</source>
        <translation>IPCC, Sexto Informe de Evaluación (2021), media de los componentes ponderada por masa</translation>
    </message>
    <message>
        <source>Lemmon (2003), Int. J. Thermophys. 24, pseudo-critical</source>
        <translation>Lemmon (2003), Int. J. Thermophys. 24, pseudocrítica</translation>
    </message>
    <message>
        <source>Lemmon (2003), Int. J. Thermophys. 24, pseudo-pure fluid; about 0.5 % uncertain in pressure; lowest temperature from memory</source>
        <translation>Lemmon (2003), Int. J. Thermophys. 24, fluido pseudopuro; presión con una incertidumbre del 0,5 % aproximadamente; temperatura mínima de memoria</translation>
    </message>
    <message>
        <source>ANSI/ASHRAE 34, from memory</source>
        <translation>ANSI/ASHRAE 34, de memoria</translation>
    </message>
    <message>
        <source>from memory</source>
        <translation>de memoria</translation>
    </message>
    <message>
        <source>our own fit to the multi-fluid mixture model, within 0.016 % of it; no published short equation is known to us</source>
        <translation>ajuste nuestro al modelo de mezclas multifluido, con una diferencia de hasta el 0,016 %; no conocemos una ecuación corta publicada</translation>
    </message>
    <message>
        <source>IPCC Fourth Assessment Report (2007), mass-weighted mean of the components, small components from memory</source>
        <translation>IPCC, Cuarto Informe de Evaluación (2007), media de los componentes ponderada por masa, los componentes menores de memoria</translation>
    </message>
    <message>
        <source>IPCC Fifth Assessment Report (2013), mass-weighted mean of the components, small components from memory</source>
        <translation>IPCC, Quinto Informe de Evaluación (2013), media de los componentes ponderada por masa, los componentes menores de memoria</translation>
    </message>
    <message>
        <source>IPCC Sixth Assessment Report (2021), mass-weighted mean of the components, small components from memory</source>
        <translation>IPCC, Sexto Informe de Evaluación (2021), media de los componentes ponderada por masa, los componentes menores de memoria</translation>
    </message>
    <message>
        <source>our own fit to the multi-fluid mixture model, within 0.016 % of it; no published short equation is known to us; the least certain of all here</source>
        <translation>ajuste nuestro al modelo de mezclas multifluido, con una diferencia de hasta el 0,016 %; no conocemos una ecuación corta publicada; es el menos seguro de todos</translation>
    </message>
    <message>
        <source>our own fit to the mixture model of Bell (2023), J. Phys. Chem. Ref. Data 52, within 0.016 % of it; no published short equation is known to us; about 0.5 K uncertain</source>
        <translation>ajuste nuestro al modelo de mezclas de Bell (2023), J. Phys. Chem. Ref. Data 52, con una diferencia de hasta el 0,016 %; no conocemos una ecuación corta publicada; incertidumbre de unos 0,5 K</translation>
    </message>
    <message>
        <source>Bücker and Wagner (2006), J. Phys. Chem. Ref. Data 35</source>
        <translation>Bücker y Wagner (2006), J. Phys. Chem. Ref. Data 35</translation>
    </message>
    <message>
        <source>published short equation, within 0.02 % of the equation of state of Bücker and Wagner (2006), J. Phys. Chem. Ref. Data 35</source>
        <translation>ecuación corta publicada, con una diferencia de hasta el 0,02 % de la ecuación de estado de Bücker y Wagner (2006), J. Phys. Chem. Ref. Data 35</translation>
    </message>
    <message>
        <source>Lemmon and Akasaka (2022), Int. J. Thermophys. 43</source>
        <translation>Lemmon y Akasaka (2022), Int. J. Thermophys. 43</translation>
    </message>
    <message>
        <source>short equation with refitted exponents, within 0.023 % of the equation of state of Lemmon and Akasaka (2022), Int. J. Thermophys. 43</source>
        <translation>ecuación corta con exponentes reajustados, con una diferencia de hasta el 0,023 % de la ecuación de estado de Lemmon y Akasaka (2022), Int. J. Thermophys. 43</translation>
    </message>
    <message>
        <source>A rusted share that grows by this much a year or more is flagged.</source>
        <translation>Una parte oxidada que crece esto o más al año se señala.</translation>
    </message>
    <message>
        <source>A reading that will leave its limit within this time is flagged.</source>
        <translation>Una lectura que saldrá de su límite en este tiempo se señala.</translation>
    </message>
    <message>
        <source>current of leg 1 (three-phase)</source>
        <translation>corriente de la fase 1 (trifásica)</translation>
    </message>
    <message>
        <source>current of leg 2 (three-phase)</source>
        <translation>corriente de la fase 2 (trifásica)</translation>
    </message>
    <message>
        <source>current of leg 3 (three-phase)</source>
        <translation>corriente de la fase 3 (trifásica)</translation>
    </message>
    <message>
        <source>current through the capacitor, running</source>
        <translation>corriente del capacitor, en marcha</translation>
    </message>
    <message>
        <source>On the start winding&apos;s wire while the unit runs; qualified people only.</source>
        <translation>En el cable del bobinado de arranque con la unidad en marcha; solo personas competentes.</translation>
    </message>
    <message>
        <source>voltage across the capacitor, running</source>
        <translation>tensión en el capacitor, en marcha</translation>
    </message>
    <message>
        <source>Across the capacitor while the unit runs; qualified people only.</source>
        <translation>En los bornes del capacitor con la unidad en marcha; solo personas competentes.</translation>
    </message>
    <message>
        <source>Three-phase currents differ from their mean by at most this.</source>
        <translation>Las corrientes trifásicas se apartan de su media como mucho esto.</translation>
    </message>
    <message>
        <source>trade association&apos;s service manual</source>
        <translation>manual de servicio de una asociación del oficio</translation>
    </message>
    <message>
        <source>Frequency of the mains in hertz: 60 in North America, 50 in most of the world.</source>
        <translation>Frecuencia de la red en hercios: 60 en Norteamérica, 50 en casi todo el mundo.</translation>
    </message>
    <message>
        <source>national standard of the mains</source>
        <translation>norma nacional de la red</translation>
    </message>
    <message>
        <source>Brought to 40 °C, a small winding has at least this insulation resistance.</source>
        <translation>Llevado a 40 °C, un bobinado pequeño tiene al menos esta resistencia de aislamiento.</translation>
    </message>
    <message>
        <source>IEEE 43-2013, from memory</source>
        <translation>IEEE 43-2013, de memoria</translation>
    </message>
    <message>
        <source>A sound zone is looked at again within this time at the latest, however slowly it is expected to decay.</source>
        <translation>Una zona en grado sano se vuelve a mirar a más tardar en este plazo, por despacio que se espere su deterioro.</translation>
    </message>
    <message>
        <source>A worn zone is looked at again within this time at the latest, however slowly it is expected to decay.</source>
        <translation>Una zona en grado usado se vuelve a mirar a más tardar en este plazo, por despacio que se espere su deterioro.</translation>
    </message>
    <message>
        <source>A marked zone is looked at again within this time at the latest, however slowly it is expected to decay.</source>
        <translation>Una zona en grado marcado se vuelve a mirar a más tardar en este plazo, por despacio que se espere su deterioro.</translation>
    </message>
    <message>
        <source>A poor zone is looked at again within this time at the latest, however slowly it is expected to decay.</source>
        <translation>Una zona en grado deficiente se vuelve a mirar a más tardar en este plazo, por despacio que se espere su deterioro.</translation>
    </message>
    <message>
        <source>A sound, worn or marked zone may wait this long for the season&apos;s visit if that is about to begin, but never past the date set by its outlook.</source>
        <translation>Una zona en grado sano, usado o marcado puede esperar este tiempo a la visita de temporada si está por empezar, pero nunca más allá de la fecha que fija su previsión.</translation>
    </message>
    <message>
        <source>Where refrigerant charge is lost once a zone is spent, the chance that this happens unseen may reach this share before it is looked at again.</source>
        <translation>Donde se pierde la carga de refrigerante cuando una zona está agotada, la probabilidad de que ocurra sin que nadie lo vea puede llegar a esta proporción antes de volver a mirarla.</translation>
    </message>
    <message>
        <source>Where the compressor is at risk once a zone is spent, the chance that this happens unseen may reach this share before it is looked at again.</source>
        <translation>Donde peligra el compresor cuando una zona está agotada, la probabilidad de que ocurra sin que nadie lo vea puede llegar a esta proporción antes de volver a mirarla.</translation>
    </message>
    <message>
        <source>Where it normally ends the unit once a zone is spent, the chance that this happens unseen may reach this share before it is looked at again.</source>
        <translation>Donde normalmente acaba con la unidad cuando una zona está agotada, la probabilidad de que ocurra sin que nadie lo vea puede llegar a esta proporción antes de volver a mirarla.</translation>
    </message>
    <message>
        <source>Where it can hurt someone once a zone is spent, the chance that this happens unseen may reach this share before it is looked at again.</source>
        <translation>Donde puede herir a alguien cuando una zona está agotada, la probabilidad de que ocurra sin que nadie lo vea puede llegar a esta proporción antes de volver a mirarla.</translation>
    </message>
    <message>
        <source>Where cooling or heating is lost once a zone is spent, the chance that this happens unseen may reach this share before it is looked at again.</source>
        <translation>Donde se pierde el frío o el calor cuando una zona está agotada, la probabilidad de que ocurra sin que nadie lo vea puede llegar a esta proporción antes de volver a mirarla.</translation>
    </message>
    <message>
        <source>Where it is a nuisance once a zone is spent, the chance that this happens unseen may reach this share before it is looked at again.</source>
        <translation>Donde solo es una molestia cuando una zona está agotada, la probabilidad de que ocurra sin que nadie lo vea puede llegar a esta proporción antes de volver a mirarla.</translation>
    </message>
    <message>
        <source>Where only looks suffer once a zone is spent, the chance that this happens unseen may reach this share before it is looked at again.</source>
        <translation>Donde solo sufre el aspecto cuando una zona está agotada, la probabilidad de que ocurra sin que nadie lo vea puede llegar a esta proporción antes de volver a mirarla.</translation>
    </message>
    <message>
        <source>An acknowledged flag comes back when what it measures has become worse by more than this share, or its grade or its urgency has become worse.</source>
        <translation>Un aviso dado por visto vuelve cuando lo que mide ha empeorado en más de esta proporción, o han empeorado su grado o su urgencia.</translation>
    </message>
    <message>
        <source>From this chance of being spent on, a flag about it wants something planned; below it, a look.</source>
        <translation>Desde esta probabilidad de estar agotado, un aviso sobre ello pide planear algo; por debajo, mirar.</translation>
    </message>
    <message>
        <source>From this chance of being spent before the next visit on, a flag about it wants something done now.</source>
        <translation>Desde esta probabilidad de estar agotado antes de la próxima visita, un aviso sobre ello pide actuar ya.</translation>
    </message>
    <message>
        <source>A part this likely to be spent within the time looked at speaks for its unit in the fleet&apos;s field, the gravest of them first.</source>
        <translation>Una pieza con esta probabilidad de quedar agotada en el plazo mirado habla por su unidad en el campo del parque, la más grave primero.</translation>
    </message>
    <message>
        <source>A zone of which this much is rusted counts as spent, whatever grade it was given.</source>
        <translation>Una zona con tanta parte oxidada se considera agotada, sea cual sea el grado que se le dio.</translation>
    </message>
    <message>
        <source>ours, at the lower bound of Ri5 in ISO 4628-3 (40 to 50 %)</source>
        <translation>nuestro, en el límite inferior de Ri5 en ISO 4628-3 (40 a 50 %)</translation>
    </message>
    <message>
        <source>Whether forecasts can be trusted is said once so many of them have been settled by later visits.</source>
        <translation>Si se puede confiar en los pronósticos se dice cuando las visitas posteriores han resuelto esta cantidad.</translation>
    </message>
    <message>
        <source>Those forecasts must be about so many different zones.</source>
        <translation>Esos pronósticos deben tratar de esta cantidad de zonas distintas.</translation>
    </message>
    <message>
        <source>Forecasts are called too gloomy or too hopeful when what came to pass lies this many standard errors from what was expected.</source>
        <translation>Los pronósticos se llaman demasiado pesimistas o demasiado optimistas cuando lo ocurrido está a esta cantidad de errores típicos de lo esperado.</translation>
    </message>
    <message>
        <source>ours; two standard errors are common practice</source>
        <translation>nuestro; dos errores típicos son práctica común</translation>
    </message>
    <message>
        <source>seasonal efficiency (SEER)</source>
        <translation>eficiencia estacional (SEER)</translation>
    </message>
    <message>
        <source>A spare that is to be had within so many days is bought when it is needed; no flag asks to order it.</source>
        <translation>Un repuesto que se consigue en estos días se compra cuando hace falta; ningún aviso pide encargarlo.</translation>
    </message>
    <message>
        <source>A zone that takes longer than this from sound to worn ages as is usual; no flag says that it got worse.</source>
        <translation>Una zona que tarda más de estos meses en pasar del grado 1 al 2 envejece como es normal; ningún aviso dice que ha empeorado.</translation>
    </message>
    <message>
        <source>Work on a zone that held longer than this before the zone was seen worse has done what is asked of it; no flag says that it failed.</source>
        <translation>Un trabajo en una zona que aguantó más de estos meses antes de que la zona se viera peor ha cumplido lo que se le pide; ningún aviso dice que haya fallado.</translation>
    </message>
    <message>
        <source>A trip whose day is kept takes along what comes to be due up to this many days before it, and says what that costs; what can&apos;t wait that long gets a trip of its own.</source>
        <translation>Un viaje cuyo día se mantiene se lleva consigo lo que venza hasta estos días antes, y dice lo que eso cuesta; lo que no puede esperar tanto recibe un viaje propio.</translation>
    </message>
    <message>
        <source>Tolerated chance of spent unseen: loss of refrigerant charge</source>
        <translation>Probabilidad tolerada de agotarse sin que nadie lo vea: pérdida de carga de refrigerante</translation>
    </message>
    <message>
        <source>Tolerated chance of spent unseen: compressor at risk</source>
        <translation>Probabilidad tolerada de agotarse sin que nadie lo vea: compresor en riesgo</translation>
    </message>
    <message>
        <source>Tolerated chance of spent unseen: normally ends the unit</source>
        <translation>Probabilidad tolerada de agotarse sin que nadie lo vea: normalmente acaba con la unidad</translation>
    </message>
    <message>
        <source>Tolerated chance of spent unseen: safety</source>
        <translation>Probabilidad tolerada de agotarse sin que nadie lo vea: seguridad</translation>
    </message>
    <message>
        <source>Tolerated chance of spent unseen: loss of cooling or heating</source>
        <translation>Probabilidad tolerada de agotarse sin que nadie lo vea: pérdida de frío o calor</translation>
    </message>
    <message>
        <source>Tolerated chance of spent unseen: nuisance</source>
        <translation>Probabilidad tolerada de agotarse sin que nadie lo vea: molestia</translation>
    </message>
    <message>
        <source>Tolerated chance of spent unseen: looks</source>
        <translation>Probabilidad tolerada de agotarse sin que nadie lo vea: aspecto</translation>
    </message>
    <message>
        <source>Longest wait at grade 1 sound</source>
        <translation>Espera máxima en grado 1 sano</translation>
    </message>
    <message>
        <source>Longest wait at grade 2 worn</source>
        <translation>Espera máxima en grado 2 usado</translation>
    </message>
    <message>
        <source>Longest wait at grade 3 marked</source>
        <translation>Espera máxima en grado 3 marcado</translation>
    </message>
    <message>
        <source>Longest wait at grade 4 poor</source>
        <translation>Espera máxima en grado 4 deficiente</translation>
    </message>
    <message>
        <source>Longest wait at grade 5 spent</source>
        <translation>Espera máxima en grado 5 agotado</translation>
    </message>
    <message>
        <source>Longest wait at any grade</source>
        <translation>Espera máxima en cualquier grado</translation>
    </message>
    <message>
        <source>Longest wait of a zone found wet</source>
        <translation>Espera máxima de una zona hallada mojada</translation>
    </message>
    <message>
        <source>Wait for a trip whose day is kept</source>
        <translation>Espera a un viaje cuyo día se mantiene</translation>
    </message>
    <message>
        <source>Wait for a season that is about to begin</source>
        <translation>Espera a una temporada a punto de empezar</translation>
    </message>
    <message>
        <source>Share of the wait after which a look counts</source>
        <translation>Parte de la espera a partir de la cual una mirada cuenta</translation>
    </message>
    <message>
        <source>Longest time without a look</source>
        <translation>Tiempo máximo sin mirarla</translation>
    </message>
    <message>
        <source>Usual time from sound to worn</source>
        <translation>Tiempo habitual de sano a usado</translation>
    </message>
    <message>
        <source>How long work has to hold</source>
        <translation>Cuánto ha de durar un trabajo</translation>
    </message>
    <message>
        <source>Shortest stretch that tells a pace</source>
        <translation>Intervalo mínimo que dice algo del ritmo</translation>
    </message>
    <message>
        <source>Worse faster: times the pace before</source>
        <translation>Empeora más deprisa: veces el ritmo anterior</translation>
    </message>
    <message>
        <source>Growth of a rusted share in a year</source>
        <translation>Crecimiento de una parte oxidada en un año</translation>
    </message>
    <message>
        <source>How far ahead a reading is watched</source>
        <translation>Con cuánta antelación se vigila una lectura</translation>
    </message>
    <message>
        <source>Chance of spent from which to plan</source>
        <translation>Probabilidad de agotado desde la que hay que planear</translation>
    </message>
    <message>
        <source>Chance of spent from which to act now</source>
        <translation>Probabilidad de agotado desde la que hay que actuar ya</translation>
    </message>
    <message>
        <source>A spare that comes within this is not ordered ahead</source>
        <translation>Un repuesto que llega en este plazo no se pide con antelación</translation>
    </message>
    <message>
        <source>Worse by this much brings an acknowledged flag back</source>
        <translation>Empeorar en esta medida hace volver un aviso dado por visto</translation>
    </message>
    <message>
        <source>Longest time to put recovered charge back</source>
        <translation>Plazo máximo para reponer la carga recuperada</translation>
    </message>
    <message>
        <source>Second addition of refrigerant within</source>
        <translation>Segunda adición de refrigerante dentro de</translation>
    </message>
    <message>
        <source>Refrigerant added in a season, of the full charge</source>
        <translation>Refrigerante añadido en una temporada, de la carga completa</translation>
    </message>
    <message>
        <source>Length of a season of additions</source>
        <translation>Duración de una temporada de adiciones</translation>
    </message>
    <message>
        <source>Chance from which a part speaks for its unit</source>
        <translation>Probabilidad desde la que una pieza habla por su unidad</translation>
    </message>
    <message>
        <source>Rusted share at which a zone is spent</source>
        <translation>Parte oxidada con la que una zona está agotada</translation>
    </message>
    <message>
        <source>Fewest settled forecasts for a verdict</source>
        <translation>Mínimo de pronósticos resueltos para un veredicto</translation>
    </message>
    <message>
        <source>Fewest zones for a verdict</source>
        <translation>Mínimo de zonas para un veredicto</translation>
    </message>
    <message>
        <source>Standard errors from which forecasts are off</source>
        <translation>Errores típicos desde los que los pronósticos se desvían</translation>
    </message>
    <message>
        <source>fin comb</source>
        <translation>peine para aletas</translation>
    </message>
    <message>
        <source>soft brush</source>
        <translation>cepillo suave</translation>
    </message>
    <message>
        <source>water hose with a gentle nozzle</source>
        <translation>manguera de agua con boquilla suave</translation>
    </message>
    <message>
        <source>clip-on ammeter</source>
        <translation>pinza amperimétrica</translation>
    </message>
    <message>
        <source>oil for motors that have ports</source>
        <translation>aceite para motores con engrasador</translation>
    </message>
    <message>
        <source>shaft cap and rain shield</source>
        <translation>capuchón del eje y protector contra la lluvia</translation>
    </message>
    <message>
        <source>cloth and mild soap</source>
        <translation>paño y jabón suave</translation>
    </message>
    <message>
        <source>cleaner and cloths</source>
        <translation>limpiador y paños</translation>
    </message>
    <message>
        <source>cabinet screws</source>
        <translation>tornillos de la envolvente</translation>
    </message>
    <message>
        <source>touch-up paint</source>
        <translation>pintura de retoque</translation>
    </message>
    <message>
        <source>rake and scraper for mud</source>
        <translation>rastrillo y rasqueta para el barro</translation>
    </message>
    <message>
        <source>rust primer and coating for wet metal</source>
        <translation>imprimación antióxido y recubrimiento para metal húmedo</translation>
    </message>
    <message>
        <source>spirit level</source>
        <translation>nivel de burbuja</translation>
    </message>
    <message>
        <source>tape measure</source>
        <translation>cinta métrica</translation>
    </message>
    <message>
        <source>gravel and risers</source>
        <translation>grava y calzos</translation>
    </message>
    <message>
        <source>shears</source>
        <translation>tijeras de podar</translation>
    </message>
    <message>
        <source>surface thermometer</source>
        <translation>termómetro de superficie</translation>
    </message>
    <message>
        <source>new strap</source>
        <translation>banda de sujeción nueva</translation>
    </message>
    <message>
        <source>multimeter</source>
        <translation>multímetro</translation>
    </message>
    <message>
        <source>insect barrier</source>
        <translation>barrera contra insectos</translation>
    </message>
    <message>
        <source>capacitance meter</source>
        <translation>capacímetro</translation>
    </message>
    <message>
        <source>sensor clip and insulation</source>
        <translation>clip del sensor y aislamiento</translation>
    </message>
    <message>
        <source>sealant for the top</source>
        <translation>sellador para la parte superior</translation>
    </message>
    <message>
        <source>torque screwdriver</source>
        <translation>destornillador dinamométrico</translation>
    </message>
    <message>
        <source>connectors and clips</source>
        <translation>conectores y grapas</translation>
    </message>
    <message>
        <source>new lug and fine abrasive</source>
        <translation>terminal nuevo y abrasivo fino</translation>
    </message>
    <message>
        <source>surface thermometer and hygrometer</source>
        <translation>termómetro de superficie e higrómetro</translation>
    </message>
    <message>
        <source>leak detector</source>
        <translation>detector de fugas</translation>
    </message>
    <message>
        <source>wall thickness gauge and couplant</source>
        <translation>medidor de espesores y acoplante</translation>
    </message>
    <message>
        <source>nylon brush</source>
        <translation>cepillo de nailon</translation>
    </message>
    <message>
        <source>cloths</source>
        <translation>paños</translation>
    </message>
    <message>
        <source>rust primer and coating for cold wet metal</source>
        <translation>imprimación antióxido y recubrimiento para metal frío y húmedo</translation>
    </message>
    <message>
        <source>gauges</source>
        <translation>manómetros</translation>
    </message>
    <message>
        <source>protective sleeves</source>
        <translation>fundas protectoras</translation>
    </message>
    <message>
        <source>insulation tester</source>
        <translation>medidor de aislamiento</translation>
    </message>
    <message>
        <source>clips for pilot tubes</source>
        <translation>grapas para los tubos piloto</translation>
    </message>
    <message>
        <source>clamp and insulation for the bulb</source>
        <translation>abrazadera y aislamiento para el bulbo</translation>
    </message>
    <message>
        <source>metal caps with seals</source>
        <translation>tapones metálicos con junta</translation>
    </message>
    <message>
        <source>sleeves and clips</source>
        <translation>fundas y grapas</translation>
    </message>
    <message>
        <source>closed-cell insulation</source>
        <translation>aislamiento de célula cerrada</translation>
    </message>
    <message>
        <source>cover against the sun</source>
        <translation>cubierta contra el sol</translation>
    </message>
</context>
<context>
    <name>core</name>
    <message>
        <source>{0}: four shares of at least 0.001 that add up to 1 are needed here.</source>
        <translation>{0}: aquí hacen falta cuatro partes de al menos 0,001 que sumen 1.</translation>
    </message>
    <message>
        <source>{0}: there is no treatment of this kind.</source>
        <translation>{0}: no hay ningún tratamiento de esta clase.</translation>
    </message>
    <message>
        <source>{0}: this part kind has no zone &quot;{1}&quot;.</source>
        <translation>{0}: esta clase de pieza no tiene la zona «{1}».</translation>
    </message>
    <message>
        <source>{0}, {1}: a number is needed here.</source>
        <translation>{0}, {1}: aquí hace falta un número.</translation>
    </message>
    <message>
        <source>{0}, {1}: a grade is a whole number from 1 to 5.</source>
        <translation>{0}, {1}: un grado es un número entero del 1 al 5.</translation>
    </message>
    <message>
        <source>{0}, {1}: true or false is needed here.</source>
        <translation>{0}, {1}: aquí hace falta true o false.</translation>
    </message>
    <message>
        <source>{0}, {1}: this is missing.</source>
        <translation>{0}, {1}: esto falta.</translation>
    </message>
    <message>
        <source>{0}, {1}: no such field is known here. Is it misspelt?</source>
        <translation>{0}, {1}: aquí no se conoce tal campo. ¿Está mal escrito?</translation>
    </message>
    <message>
        <source>{0}, {1}: a list of numbers in square brackets is needed here.</source>
        <translation>{0}, {1}: aquí hace falta una lista de números entre corchetes.</translation>
    </message>
    <message>
        <source>{0}, {1}: four rates are needed, out of grades 1 to 4.</source>
        <translation>{0}, {1}: hacen falta cuatro tasas, de los grados 1 a 4.</translation>
    </message>
    <message>
        <source>{0}, {1}: &quot;unknown&quot; or an object with grade and exposure is needed here.</source>
        <translation>{0}, {1}: aquí hace falta &quot;unknown&quot; o un objeto con grade y exposure.</translation>
    </message>
    <message>
        <source>{0}, {1}: an object with exposure and grade is needed here.</source>
        <translation>{0}, {1}: aquí hace falta un objeto con exposure y grade.</translation>
    </message>
    <message>
        <source>{0}, {1}: what was not seen has no grade. Leave one of them out.</source>
        <translation>{0}, {1}: lo que no se vio no tiene grado. Quite uno de los dos.</translation>
    </message>
    <message>
        <source>{0}, {1}: a list in square brackets is needed here.</source>
        <translation>{0}, {1}: aquí hace falta una lista entre corchetes.</translation>
    </message>
    <message>
        <source>{0} is no JSON object. It must begin with a curly brace and be complete.</source>
        <translation>{0} no es un objeto JSON. Debe empezar con una llave y estar completo.</translation>
    </message>
    <message>
        <source>{0}, {1}: a whole number from 1 to {2} is needed here.</source>
        <translation>{0}, {1}: aquí hace falta un número entero del 1 al {2}.</translation>
    </message>
    <message>
        <source>{0}, line {1}: unit {2} goes back in time since line {3}. Put its rows in order.</source>
        <translation>{0}, línea {1}: el equipo {2} retrocede en el tiempo desde la línea {3}. Ponga sus filas en orden.</translation>
    </message>
    <message>
        <source>{0}, line {1}: unit {2} goes from grade {3} to {4}, which is better; rates are learned from decay alone. Give it another unit name after a repair.</source>
        <translation>{0}, línea {1}: el equipo {2} pasa del grado {3} al {4}, que es mejor; las tasas se aprenden solo del deterioro. Dele otro nombre de equipo tras una reparación.</translation>
    </message>
    <message>
        <source>{0}, line {1}: unit {2} goes from grade {3} to {4} in no time. Correct years or grade.</source>
        <translation>{0}, línea {1}: el equipo {2} pasa del grado {3} al {4} sin que pase tiempo. Corrija los años o el grado.</translation>
    </message>
    <message>
        <source>{0} has no unit that was seen twice, so there is no step to learn rates from.</source>
        <translation>{0} no tiene ningún equipo visto dos veces, así que no hay paso del que aprender tasas.</translation>
    </message>
    <message>
        <source>Rates lie between 0 and {0} per year.</source>
        <translation>Las tasas están entre 0 y {0} por año.</translation>
    </message>
    <message>
        <source>Horizons lie between 0 and {0} years.</source>
        <translation>Los horizontes están entre 0 y {0} años.</translation>
    </message>
    <message>
        <source>At most {0} observations are weighed.</source>
        <translation>Se sopesan como mucho {0} observaciones.</translation>
    </message>
    <message>
        <source>The start lies between 0 and {0} years of exposure.</source>
        <translation>El comienzo está entre 0 y {0} años de exposición.</translation>
    </message>
    <message>
        <source>Observation {0}: exposure lies between 0 and {1} years.</source>
        <translation>Observación {0}: la exposición está entre 0 y {1} años.</translation>
    </message>
    <message>
        <source>Observation {0}: its exposure is less than what came before it. Put them in order.</source>
        <translation>Observación {0}: su exposición es menor que la anterior. Póngalas en orden.</translation>
    </message>
    <message>
        <source>Observation {0}: it can&apos;t be other than spent after what came before, yet it is said to work. Correct one of them, or begin anew after a repair.</source>
        <translation>Observación {0}: tras lo anterior no puede estar sino agotada, y sin embargo se dice que funciona. Corrija una de las dos, o empiece de nuevo tras una reparación.</translation>
    </message>
    <message>
        <source>Observation {0}: grade {1} can&apos;t follow from what came before at these rates. Correct one of them, or begin anew after a repair.</source>
        <translation>Observación {0}: el grado {1} no puede seguir a lo anterior con estas tasas. Corrija una de las dos, o empiece de nuevo tras una reparación.</translation>
    </message>
    <message>
        <source>Spent later than {0}, with a chance of more than 90 %.</source>
        <translation>Agotada después del {0}, con una probabilidad de más del 90 %.</translation>
    </message>
    <message>
        <source>Spent by today, with a chance of at least 90 %.</source>
        <translation>Agotada ya hoy, con una probabilidad de al menos el 90 %.</translation>
    </message>
    <message>
        <source>There is a chance of 10 % that it is spent by {0}, and of less than 50 % by {1}.</source>
        <translation>Hay una probabilidad del 10 % de que esté agotada el {0}, y de menos del 50 % el {1}.</translation>
    </message>
    <message>
        <source>Spent from {0} on (10 %), in the middle by {1} (50 %), and with a chance of 90 % only later than {2}.</source>
        <translation>Agotada a partir del {0} (10 %), en el medio el {1} (50 %), y con una probabilidad del 90 % solo después del {2}.</translation>
    </message>
    <message>
        <source>Spent between {0} (10 %) and {2} (90 %), in the middle by {1} (50 %).</source>
        <translation>Agotada entre el {0} (10 %) y el {2} (90 %), en el medio el {1} (50 %).</translation>
    </message>
    <message>
        <source>Never seen, and its age is not known: only the usual life of its kind speaks here.</source>
        <translation>Nunca vista, y no se conoce su edad: aquí solo habla la vida usual de su clase.</translation>
    </message>
    <message>
        <source>Never seen: the usual life of its kind since it was fitted on {0}.</source>
        <translation>Nunca vista: la vida usual de su clase desde que se montó el {0}.</translation>
    </message>
    <message>
        <source>{0} {1} when last seen on {2}; it gets worse at about the usual pace of its kind.</source>
        <translation>{0} {1} cuando se vio por última vez el {2}; empeora más o menos al ritmo usual de su clase.</translation>
    </message>
    <message>
        <source>{0} {1} when last seen on {2}; it gets worse more slowly than usual, at about {3} times the pace of its kind.</source>
        <translation>{0} {1} cuando se vio por última vez el {2}; empeora más despacio de lo usual, a unas {3} veces el ritmo de su clase.</translation>
    </message>
    <message>
        <source>{0} {1} when last seen on {2}; it gets worse faster than usual, at about {3} times the pace of its kind.</source>
        <translation>{0} {1} cuando se vio por última vez el {2}; empeora más deprisa de lo usual, a unas {3} veces el ritmo de su clase.</translation>
    </message>
    <message>
        <source>Looked for in vain since then, last on {0}: it may be worse by now, not better.</source>
        <translation>Buscada en vano desde entonces, la última vez el {0}: puede estar peor ahora, no mejor.</translation>
    </message>
    <message>
        <source>The protection of {0} is expected to slow it until {1}; what lies under it is not better for it.</source>
        <translation>Se espera que la protección del {0} la frene hasta el {1}; lo que hay debajo no mejora por ello.</translation>
    </message>
    <message>
        <source>In the air of this site it ages about {0} times as fast as in the middle of corrosivity category C3 (ISO 9223); the factor is an assumption.</source>
        <translation>En el aire de este lugar envejece unas {0} veces tan deprisa como en el medio de la categoría de corrosividad C3 (ISO 9223); el factor es un supuesto.</translation>
    </message>
    <message>
        <source>The air of this site is not known; the middle of corrosivity category C3 (ISO 9223) stands in for it.</source>
        <translation>No se conoce el aire de este lugar; en su lugar vale el medio de la categoría de corrosividad C3 (ISO 9223).</translation>
    </message>
    <message>
        <source>On {0} it was graded as it could not be after what came before; it is taken as repaired then.</source>
        <translation>El {0} se le dio un grado que no podía tener tras lo anterior; se toma como reparada entonces.</translation>
    </message>
    <message>
        <source>Rates can only be learned around prior rates and a spread above 0.</source>
        <translation>Las tasas solo pueden aprenderse en torno a tasas previas y a una dispersión mayores que 0.</translation>
    </message>
    <message>
        <source>The rates learned from the records did not settle after {0} rounds; the prior rates stay in use.</source>
        <translation>Las tasas aprendidas de los registros no se asentaron tras {0} vueltas; siguen en uso las tasas previas.</translation>
    </message>
    <message>
        <source>The spread of the pace must lie between 0 and {0}.</source>
        <translation>La dispersión del ritmo debe estar entre 0 y {0}.</translation>
    </message>
    <message>
        <source>The pace is carried on 1 to {0} nodes.</source>
        <translation>El ritmo se lleva en 1 a {0} nodos.</translation>
    </message>
    <message>
        <source>Step {0} takes no number of years from 0 on. Check its dates.</source>
        <translation>El paso {0} no dura un número de años a partir de 0. Revise sus fechas.</translation>
    </message>
    <message>
        <source>Step {0} goes from grade {1} to {2}, which is better; rates are learned from decay alone. Begin a new unit after a repair.</source>
        <translation>El paso {0} va del grado {1} al {2}, que es mejor; las tasas se aprenden solo del deterioro. Empiece otro equipo tras una reparación.</translation>
    </message>
    <message>
        <source>Step {0} goes from grade {1} to {2} in no time. Check its dates.</source>
        <translation>El paso {0} va del grado {1} al {2} sin que pase tiempo. Revise sus fechas.</translation>
    </message>
    <message>
        <source>No unit was seen twice, so there is no step to learn rates from.</source>
        <translation>Ningún equipo se vio dos veces, así que no hay paso del que aprender tasas.</translation>
    </message>
    <message>
        <source>The rates did not settle after {0} rounds; the steps say too little, or contradict each other.</source>
        <translation>Las tasas no se asentaron tras {0} vueltas; los pasos dicen demasiado poco o se contradicen.</translation>
    </message>
    <message>
        <source>No part of this unit is known to stop it.</source>
        <translation>No se sabe de ninguna pieza de este equipo que lo detenga.</translation>
    </message>
    <message>
        <source>looks</source>
        <translation>aspecto</translation>
    </message>
    <message>
        <source>nuisance</source>
        <translation>molestia</translation>
    </message>
    <message>
        <source>loss of cooling or heating</source>
        <translation>pérdida de frío o calor</translation>
    </message>
    <message>
        <source>loss of refrigerant charge</source>
        <translation>pérdida de la carga de refrigerante</translation>
    </message>
    <message>
        <source>compressor at risk</source>
        <translation>compresor en riesgo</translation>
    </message>
    <message>
        <source>normally ends the unit</source>
        <translation>normalmente acaba con la unidad</translation>
    </message>
    <message>
        <source>safety</source>
        <translation>seguridad</translation>
    </message>
    <message>
        <source>easy to get</source>
        <translation>fácil de conseguir</translation>
    </message>
    <message>
        <source>usually to be had</source>
        <translation>se suele conseguir</translation>
    </message>
    <message>
        <source>scarce late in the unit&apos;s life</source>
        <translation>escaso al final de la vida de la unidad</translation>
    </message>
    <message>
        <source>no separate spare</source>
        <translation>sin repuesto aparte</translation>
    </message>
    <message>
        <source>dry</source>
        <translation>seco</translation>
    </message>
    <message>
        <source>unit off</source>
        <translation>unidad apagada</translation>
    </message>
    <message>
        <source>unit running</source>
        <translation>unidad en marcha</translation>
    </message>
    <message>
        <source>cold season</source>
        <translation>temporada fría</translation>
    </message>
    <message>
        <source>cooling season</source>
        <translation>temporada de refrigeración</translation>
    </message>
    <message>
        <source>outdoors at least 13 °C (55 °F)</source>
        <translation>al menos 13 °C (55 °F) en el exterior</translation>
    </message>
    <message>
        <source>{0}: this is not JSON; it breaks off near character {1}. Correct it there.</source>
        <translation>{0}: esto no es JSON; se corta cerca del carácter {1}. Corríjalo ahí.</translation>
    </message>
    <message>
        <source>{0}: one of its numbers is too large to be meant.</source>
        <translation>{0}: uno de sus números es demasiado grande para ser verdad.</translation>
    </message>
    <message>
        <source>{0}: the text is nested deeper than {1} levels; the catalogue never is.</source>
        <translation>{0}: el texto tiene más de {1} niveles de profundidad; el catálogo nunca los tiene.</translation>
    </message>
    <message>
        <source>{0}: the field &quot;{1}&quot; stands twice in one place. Keep one of the two.</source>
        <translation>{0}: el campo &quot;{1}&quot; aparece dos veces en un mismo lugar. Deje solo uno.</translation>
    </message>
    <message>
        <source>{0}: a JSON object is needed here, beginning with a curly brace.</source>
        <translation>{0}: aquí hace falta un objeto JSON, que empieza con una llave.</translation>
    </message>
    <message>
        <source>A text of the catalogue</source>
        <translation>Un texto del catálogo</translation>
    </message>
    <message>
        <source>Your own changes to the catalogue</source>
        <translation>Sus cambios propios al catálogo</translation>
    </message>
    <message>
        <source>{0}: an assumption can be changed but not taken away; rules need it.</source>
        <translation>{0}: un supuesto se puede cambiar pero no quitar; las reglas lo necesitan.</translation>
    </message>
    <message>
        <source>{0}: fields in curly braces are needed here.</source>
        <translation>{0}: aquí hacen falta campos entre llaves.</translation>
    </message>
    <message>
        <source>{0}: this is missing.</source>
        <translation>{0}: esto falta.</translation>
    </message>
    <message>
        <source>{0}: words in quotation marks are needed here.</source>
        <translation>{0}: aquí hacen falta palabras entre comillas.</translation>
    </message>
    <message>
        <source>{0}: a number without quotation marks is needed here.</source>
        <translation>{0}: aquí hace falta un número sin comillas.</translation>
    </message>
    <message>
        <source>{0}: true or false is needed here, without quotation marks.</source>
        <translation>{0}: aquí hace falta true o false, sin comillas.</translation>
    </message>
    <message>
        <source>{0}: a list of words in square brackets is needed here.</source>
        <translation>{0}: aquí hace falta una lista de palabras entre corchetes.</translation>
    </message>
    <message>
        <source>{0}: a code has only small letters a to z, digits and hyphens.</source>
        <translation>{0}: un código solo tiene letras minúsculas de la a a la z, cifras y guiones.</translation>
    </message>
    <message>
        <source>{0}: the catalogue knows no such field here.</source>
        <translation>{0}: el catálogo no conoce ese campo aquí.</translation>
    </message>
    <message>
        <source>{0}: &quot;{1}&quot; is not known here. It can be: {2}.</source>
        <translation>{0}: &quot;{1}&quot; no se conoce aquí. Puede ser: {2}.</translation>
    </message>
    <message>
        <source>{0}: &quot;{1}&quot; is not a unit of this quantity.</source>
        <translation>{0}: &quot;{1}&quot; no es una unidad de esta magnitud.</translation>
    </message>
    <message>
        <source>{0}: the lowest value must be below the highest.</source>
        <translation>{0}: el valor mínimo debe estar por debajo del máximo.</translation>
    </message>
    <message>
        <source>{0}: five sentences are needed, there are {1}.</source>
        <translation>{0}: hacen falta cinco frases, hay {1}.</translation>
    </message>
    <message>
        <source>{0}: a task belongs to spring or to fall.</source>
        <translation>{0}: una tarea es de primavera o de otoño.</translation>
    </message>
    <message>
        <source>{0}: a number above zero is needed here.</source>
        <translation>{0}: aquí hace falta un número mayor que cero.</translation>
    </message>
    <message>
        <source>{0}: at least one is needed.</source>
        <translation>{0}: hace falta al menos uno.</translation>
    </message>
    <message>
        <source>{0}: there is no part kind with this code.</source>
        <translation>{0}: no hay ninguna clase de pieza con este código.</translation>
    </message>
    <message>
        <source>{0}: this part kind does not name &quot;{1}&quot; in its unit_kinds.</source>
        <translation>{0}: esta clase de pieza no nombra &quot;{1}&quot; en sus unit_kinds.</translation>
    </message>
    <message>
        <source>{0}: there is no unit kind &quot;{1}&quot;.</source>
        <translation>{0}: no hay ninguna clase de unidad &quot;{1}&quot;.</translation>
    </message>
    <message>
        <source>{0}: there is no caution &quot;{1}&quot;.</source>
        <translation>{0}: no hay ninguna precaución &quot;{1}&quot;.</translation>
    </message>
    <message>
        <source>{0}: this task code is used already, in {1}. Give one of them another.</source>
        <translation>{0}: este código de tarea ya se usa, en {1}. Dé otro a uno de los dos.</translation>
    </message>
    <message>
        <source>{0}: there is no part kind &quot;{1}&quot;.</source>
        <translation>{0}: no hay ninguna clase de pieza &quot;{1}&quot;.</translation>
    </message>
    <message>
        <source>{0}, line {1}: this is not UTF-8 text. Save the file as “CSV UTF-8” and try again.</source>
        <translation>{0}, línea {1}: esto no es texto UTF-8. Guarde el archivo como «CSV UTF-8» e inténtelo de nuevo.</translation>
    </message>
    <message>
        <source>{0}, line {1}: the values are not separated by commas. Save the file with commas and decimal points.</source>
        <translation>{0}, línea {1}: los valores no están separados por comas. Guarde el archivo con comas y puntos decimales.</translation>
    </message>
    <message>
        <source>{0}, line {1}: column {2} has no name. The first line must name every column.</source>
        <translation>{0}, línea {1}: la columna {2} no tiene nombre. La primera línea debe nombrar cada columna.</translation>
    </message>
    <message>
        <source>{0}, line {1}: the column “{2}” is there twice. Leave only one of them.</source>
        <translation>{0}, línea {1}: la columna «{2}» aparece dos veces. Deje solo una.</translation>
    </message>
    <message>
        <source>{0}, line {1}: values in this line: {2}, but columns: {3}. Make them agree.</source>
        <translation>{0}, línea {1}: valores en esta línea: {2}, pero columnas: {3}. Haga que coincidan.</translation>
    </message>
    <message>
        <source>{0} is empty. Its first line must name the columns.</source>
        <translation>{0} está vacío. Su primera línea debe nombrar las columnas.</translation>
    </message>
    <message>
        <source>{0}, line {1}: there is a quotation mark inside a value. Put the whole value in quotation marks and write the inner ones twice.</source>
        <translation>{0}, línea {1}: hay comillas dentro de un valor. Ponga el valor entero entre comillas y escriba dobles las de dentro.</translation>
    </message>
    <message>
        <source>{0}, line {1}: something follows a closing quotation mark. Put a comma there, or write quotation marks inside a value twice.</source>
        <translation>{0}, línea {1}: hay algo tras las comillas de cierre. Ponga ahí una coma, o escriba dobles las comillas de dentro de un valor.</translation>
    </message>
    <message>
        <source>{0}, line {1}: a quotation mark is opened here and never closed. Close it, or take it out.</source>
        <translation>{0}, línea {1}: aquí se abren comillas que nunca se cierran. Ciérrelas o quítelas.</translation>
    </message>
    <message>
        <source>{0} has no column “{1}”; its columns are: {2}. Name it in the first line.</source>
        <translation>{0} no tiene la columna «{1}»; sus columnas son: {2}. Nómbrela en la primera línea.</translation>
    </message>
    <message>
        <source>{0}, line {1}: “{2}” in the column “{3}” is not a number. Write it like 12.5.</source>
        <translation>{0}, línea {1}: «{2}» en la columna «{3}» no es un número. Escríbalo como 12.5.</translation>
    </message>
    <message>
        <source>{0}, line {1}: “{2}” in the column “{3}” is not a whole number from {4} to {5}.</source>
        <translation>{0}, línea {1}: «{2}» en la columna «{3}» no es un número entero de {4} a {5}.</translation>
    </message>
    <message>
        <source>Needs: {0}.</source>
        <translation>Necesita: {0}.</translation>
    </message>
    <message>
        <source>Planned for {0}.</source>
        <translation>Previsto para {0}.</translation>
    </message>
    <message>
        <source>There is no file “{0}”. Check the path.</source>
        <translation>No existe el archivo «{0}». Compruebe la ruta.</translation>
    </message>
    <message>
        <source>“{0}” is a folder. Name a file in it.</source>
        <translation>«{0}» es una carpeta. Indique un archivo dentro de ella.</translation>
    </message>
    <message>
        <source>“{0}” cannot be opened. Check that you may read it.</source>
        <translation>«{0}» no se puede abrir. Compruebe que tiene permiso para leerlo.</translation>
    </message>
    <message>
        <source>“{0}” is larger than {1} million bytes. Split it, or check that it is the right file.</source>
        <translation>«{0}» pasa de {1} millones de bytes. Divídalo, o compruebe que es el archivo correcto.</translation>
    </message>
    <message>
        <source>“{0}” could not be read to its end. Check the disk, then try again.</source>
        <translation>«{0}» no se pudo leer hasta el final. Compruebe el disco e inténtelo de nuevo.</translation>
    </message>
    <message>
        <source>{0} has no values below its first line. Add at least one.</source>
        <translation>{0} no tiene valores debajo de su primera línea. Añada al menos uno.</translation>
    </message>
    <message>
        <source>{0} has {1} values; a trend is worked out for at most {2}.</source>
        <translation>{0} tiene {1} valores; una tendencia se calcula con {2} como máximo.</translation>
    </message>
    <message>
        <source>{0}, line {1}: the window ends on day {3}, before it begins on day {2}. Swap them.</source>
        <translation>{0}, línea {1}: el margen termina el día {3}, antes de empezar el día {2}. Intercámbielos.</translation>
    </message>
    <message>
        <source>{0}{1}, {2}: {3} {4} on {5}, but {6} {7} on {8} with no work on record in between; one of the two is doubtful.</source>
        <translation>{0}{1}, {2}: {3} {4} el {5}, pero {6} {7} el {8} sin trabajo registrado de por medio; uno de los dos es dudoso.</translation>
    </message>
    <message>
        <source>Seen and graded again, or the doubtful grade corrected.</source>
        <translation>Verla y darle grado de nuevo, o corregir el grado dudoso.</translation>
    </message>
    <message>
        <source>{0}{1}, {2}: {3} {4} on {5}. Once spent, this part normally ends the unit.</source>
        <translation>{0}{1}, {2}: {3} {4} el {5}. Una vez agotada, esta pieza normalmente acaba con la unidad.</translation>
    </message>
    <message>
        <source>{0}{1}, {2}: {3} {4} on {5}. No separate spare is made for this part.</source>
        <translation>{0}{1}, {2}: {3} {4} el {5}. No se fabrica repuesto aparte de esta pieza.</translation>
    </message>
    <message>
        <source>Repaired and left at {0} {1} or better, or the part replaced.</source>
        <translation>Repararla y dejarla en {0} {1} o mejor, o sustituir la pieza.</translation>
    </message>
    <message>
        <source>look</source>
        <translation>mirar</translation>
    </message>
    <message>
        <source>plan</source>
        <translation>planificar</translation>
    </message>
    <message>
        <source>act</source>
        <translation>actuar</translation>
    </message>
    <message>
        <source>{0}{1}, {2}: never looked at; nothing is known of it.</source>
        <translation>{0}{1}, {2}: nunca se ha mirado; no se sabe nada de ella.</translation>
    </message>
    <message>
        <source>{0}{1}, {2}: never seen; looked for in vain on {3} ({4}).</source>
        <translation>{0}{1}, {2}: nunca se ha visto; se intentó en vano el {3} ({4}).</translation>
    </message>
    <message>
        <source>{0}{1}, {2}: never seen; looked for in vain at {3} visits since {4} (last: {5}).</source>
        <translation>{0}{1}, {2}: nunca se ha visto; se intentó en vano en {3} visitas desde el {4} (la última: {5}).</translation>
    </message>
    <message>
        <source>{0}{1}, {2}: last seen {6} months ago, {3} {4} on {5}.</source>
        <translation>{0}{1}, {2}: se vio por última vez hace {6} meses, {3} {4} el {5}.</translation>
    </message>
    <message>
        <source>{0}{1}, {2}: last seen {6} months ago, {3} {4} on {5}; looked for in vain on {9} ({8}).</source>
        <translation>{0}{1}, {2}: se vio por última vez hace {6} meses, {3} {4} el {5}; se intentó en vano el {9} ({8}).</translation>
    </message>
    <message>
        <source>{0}{1}, {2}: last seen {6} months ago, {3} {4} on {5}; looked for in vain at {7} visits since (last: {8}).</source>
        <translation>{0}{1}, {2}: se vio por última vez hace {6} meses, {3} {4} el {5}; se intentó en vano en {7} visitas desde entonces (la última: {8}).</translation>
    </message>
    <message>
        <source>Seen and graded at a visit.</source>
        <translation>Verla y darle grado en una visita.</translation>
    </message>
    <message>
        <source>{0}{1}, {2}: {3} {4} on {5}, and its failure can hurt someone.</source>
        <translation>{0}{1}, {2}: {3} {4} el {5}, y su fallo puede herir a alguien.</translation>
    </message>
    <message>
        <source>Made good and left at {0} {1} or better, or the part replaced.</source>
        <translation>Arreglarla y dejarla en {0} {1} o mejor, o sustituir la pieza.</translation>
    </message>
    <message>
        <source>{0}{1}, {2}: {3} {4} on {5}. Clean it before the unit runs on.</source>
        <translation>{0}{1}, {2}: {3} {4} el {5}. Límpiela antes de que la unidad siga funcionando.</translation>
    </message>
    <message>
        <source>Cleaned and left better.</source>
        <translation>Limpiarla y dejarla mejor.</translation>
    </message>
    <message>
        <source>{0}{1}, {2}: {3} {4} on {5}. Repair or replace it, or take the unit out of service.</source>
        <translation>{0}{1}, {2}: {3} {4} el {5}. Repárela o sustitúyala, o ponga la unidad fuera de servicio.</translation>
    </message>
    <message>
        <source>Repaired and left better, or the part replaced.</source>
        <translation>Repararla y dejarla mejor, o sustituir la pieza.</translation>
    </message>
    <message>
        <source>{0}{1}, {2}: {3} {4} after the work of {5} ({6}), but {7} {8} on {9}; worse again within {10} days.</source>
        <translation>{0}{1}, {2}: {3} {4} tras el trabajo del {5} ({6}), pero {7} {8} el {9}; peor otra vez en {10} días.</translation>
    </message>
    <message>
        <source>{0}{1}, {2}: {3} {4} after the work of {5} ({6}), but {7} {8} on {9}; worse again within {10} months.</source>
        <translation>{0}{1}, {2}: {3} {4} tras el trabajo del {5} ({6}), pero {7} {8} el {9}; peor otra vez en {10} meses.</translation>
    </message>
    <message>
        <source>Worked on again and left at {0} {1} or better, or seen so at a later visit.</source>
        <translation>Volver a trabajar en ella y dejarla en {0} {1} o mejor, o verla así en una visita posterior.</translation>
    </message>
    <message>
        <source>{0}{1}, {2}: {3} {4} on {5}, {6} {7} when last seen on {8}; one grade worse in {9} days.</source>
        <translation>{0}{1}, {2}: {3} {4} el {5}, {6} {7} la última vez que se vio, el {8}; un grado peor en {9} días.</translation>
    </message>
    <message>
        <source>{0}{1}, {2}: {3} {4} on {5}, {6} {7} when last seen on {8}; one grade worse in {9} months.</source>
        <translation>{0}{1}, {2}: {3} {4} el {5}, {6} {7} la última vez que se vio, el {8}; un grado peor en {9} meses.</translation>
    </message>
    <message>
        <source>{0}{1}, {2}: {3} {4} on {5}, {6} {7} when last seen on {8}; {10} grades worse in {9} days.</source>
        <translation>{0}{1}, {2}: {3} {4} el {5}, {6} {7} la última vez que se vio, el {8}; {10} grados peor en {9} días.</translation>
    </message>
    <message>
        <source>{0}{1}, {2}: {3} {4} on {5}, {6} {7} when last seen on {8}; {10} grades worse in {9} months.</source>
        <translation>{0}{1}, {2}: {3} {4} el {5}, {6} {7} la última vez que se vio, el {8}; {10} grados peor en {9} meses.</translation>
    </message>
    <message>
        <source>Seen no worse at the next visit, or worked on and left at {0} {1} or better.</source>
        <translation>Verla no peor en la próxima visita, o trabajar en ella y dejarla en {0} {1} o mejor.</translation>
    </message>
    <message>
        <source>{0}{1}, {2}: from {3} {4} to {5} {6} in {7} months, before that from {8} {9} to {3} {4} in {10} months; getting worse faster.</source>
        <translation>{0}{1}, {2}: de {3} {4} a {5} {6} en {7} meses, antes de {8} {9} a {3} {4} en {10} meses; empeora más deprisa.</translation>
    </message>
    <message>
        <source>{0}{1}, {2}: held at {3} {4} from {5} to {6}, then {7} grades worse by {8}; getting worse faster.</source>
        <translation>{0}{1}, {2}: se mantuvo en {3} {4} del {5} al {6}, y luego {7} grados peor para el {8}; empeora más deprisa.</translation>
    </message>
    <message>
        <source>“{0}” has no unit. Type it with one, like {0} {1}.</source>
        <translation>«{0}» no tiene unidad. Escríbalo con una, como {0} {1}.</translation>
    </message>
    <message>
        <source>“{0}” does not belong here. Type the number alone.</source>
        <translation>«{0}» no corresponde aquí. Escriba solo el número.</translation>
    </message>
    <message>
        <source>“{0}” is not a unit that fits here ({1} are). Type one of these.</source>
        <translation>«{0}» no es una unidad válida aquí (lo son {1}). Escriba una de estas.</translation>
    </message>
    <message>
        <source>“{0}” is too large. Check the number and its unit.</source>
        <translation>«{0}» es demasiado grande. Compruebe el número y su unidad.</translation>
    </message>
    <message>
        <source>“{0}” is below absolute zero. Check the number and its unit.</source>
        <translation>«{0}» está por debajo del cero absoluto. Compruebe el número y su unidad.</translation>
    </message>
    <message>
        <source>There is no number here. Type digits, like 12.5 or 1/8.</source>
        <translation>Aquí no hay ningún número. Escriba cifras, como 12,5 o 1/8.</translation>
    </message>
    <message>
        <source>“{0}” is not a number. Type digits, like 12.5 or 1/8.</source>
        <translation>«{0}» no es un número. Escriba cifras, como 12,5 o 1/8.</translation>
    </message>
    <message>
        <source>“{0}” has a thousands separator or two decimal signs. Type the number without separators.</source>
        <translation>«{0}» lleva separador de miles o dos signos decimales. Escriba el número sin separadores.</translation>
    </message>
    <message>
        <source>“{0}” could mean {1} or {2}. Type one of these.</source>
        <translation>«{0}» podría significar {1} o {2}. Escriba uno de los dos.</translation>
    </message>
    <message>
        <source>clean</source>
        <translation>limpieza</translation>
    </message>
    <message>
        <source>brush and coat</source>
        <translation>cepillado y recubrimiento</translation>
    </message>
    <message>
        <source>grease</source>
        <translation>engrase</translation>
    </message>
    <message>
        <source>lubricate</source>
        <translation>lubricación</translation>
    </message>
    <message>
        <source>repair</source>
        <translation>reparación</translation>
    </message>
    <message>
        <source>replace</source>
        <translation>sustitución</translation>
    </message>
    <message>
        <source>added</source>
        <translation>añadido</translation>
    </message>
    <message>
        <source>recovered</source>
        <translation>recuperado</translation>
    </message>
    <message>
        <source>lost</source>
        <translation>perdido</translation>
    </message>
    <message>
        <source>sound</source>
        <translation>sano</translation>
    </message>
    <message>
        <source>worn</source>
        <translation>usado</translation>
    </message>
    <message>
        <source>marked</source>
        <translation>marcado</translation>
    </message>
    <message>
        <source>poor</source>
        <translation>deficiente</translation>
    </message>
    <message>
        <source>spent</source>
        <translation>agotado</translation>
    </message>
    <message>
        <source>covered by a panel or jacket</source>
        <translation>tapado por un panel o una camisa</translation>
    </message>
    <message>
        <source>no access</source>
        <translation>sin acceso</translation>
    </message>
    <message>
        <source>under ice or snow</source>
        <translation>bajo hielo o nieve</translation>
    </message>
    <message>
        <source>unit had to keep running</source>
        <translation>la unidad tenía que seguir en marcha</translation>
    </message>
    <message>
        <source>not safe to open</source>
        <translation>no era seguro abrir</translation>
    </message>
    <message>
        <source>no time</source>
        <translation>sin tiempo</translation>
    </message>
    <message>
        <source>another reason</source>
        <translation>otra razón</translation>
    </message>
    <message>
        <source>damp</source>
        <translation>húmedo</translation>
    </message>
    <message>
        <source>wet</source>
        <translation>mojado</translation>
    </message>
    <message>
        <source>as found</source>
        <translation>al llegar</translation>
    </message>
    <message>
        <source>as left</source>
        <translation>al irse</translation>
    </message>
    <message>
        <source>temperature</source>
        <translation>temperatura</translation>
    </message>
    <message>
        <source>temperature difference</source>
        <translation>diferencia de temperatura</translation>
    </message>
    <message>
        <source>gauge pressure</source>
        <translation>presión manométrica</translation>
    </message>
    <message>
        <source>absolute pressure</source>
        <translation>presión absoluta</translation>
    </message>
    <message>
        <source>length</source>
        <translation>longitud</translation>
    </message>
    <message>
        <source>mass</source>
        <translation>masa</translation>
    </message>
    <message>
        <source>current</source>
        <translation>corriente</translation>
    </message>
    <message>
        <source>voltage</source>
        <translation>tensión</translation>
    </message>
    <message>
        <source>resistance</source>
        <translation>resistencia</translation>
    </message>
    <message>
        <source>capacitance</source>
        <translation>capacidad eléctrica</translation>
    </message>
    <message>
        <source>duration</source>
        <translation>duración</translation>
    </message>
    <message>
        <source>ratio</source>
        <translation>proporción</translation>
    </message>
    <message>
        <source>airflow</source>
        <translation>caudal de aire</translation>
    </message>
    <message>
        <source>velocity</source>
        <translation>velocidad</translation>
    </message>
    <message>
        <source>power</source>
        <translation>potencia</translation>
    </message>
    <message>
        <source>count</source>
        <translation>número</translation>
    </message>
    <message>
        <source>unknown</source>
        <translation>sin conocer</translation>
    </message>
    <message>
        <source>fixed orifice</source>
        <translation>orificio fijo</translation>
    </message>
    <message>
        <source>thermostatic valve</source>
        <translation>válvula termostática</translation>
    </message>
    <message>
        <source>electronic valve</source>
        <translation>válvula electrónica</translation>
    </message>
    <message>
        <source>spring</source>
        <translation>primavera</translation>
    </message>
    <message>
        <source>fall</source>
        <translation>otoño</translation>
    </message>
    <message>
        <source>call-out</source>
        <translation>llamada</translation>
    </message>
    <message>
        <source>not noted</source>
        <translation>sin anotar</translation>
    </message>
    <message>
        <source>off</source>
        <translation>apagada</translation>
    </message>
    <message>
        <source>running, cooling</source>
        <translation>en marcha, en frío</translation>
    </message>
    <message>
        <source>running, heating</source>
        <translation>en marcha, en calor</translation>
    </message>
    <message>
        <source>running, defrosting</source>
        <translation>en marcha, en desescarche</translation>
    </message>
    <message>
        <source>clear</source>
        <translation>despejado</translation>
    </message>
    <message>
        <source>cloudy</source>
        <translation>nublado</translation>
    </message>
    <message>
        <source>fog</source>
        <translation>niebla</translation>
    </message>
    <message>
        <source>rain</source>
        <translation>lluvia</translation>
    </message>
    <message>
        <source>snow</source>
        <translation>nieve</translation>
    </message>
    <message>
        <source>worse</source>
        <translation>peor</translation>
    </message>
    <message>
        <source>better without work</source>
        <translation>mejor sin trabajo</translation>
    </message>
    <message>
        <source>better after work</source>
        <translation>mejor tras un trabajo</translation>
    </message>
    <message>
        <source>seen for the first time</source>
        <translation>se ve por primera vez</translation>
    </message>
    <message>
        <source>same</source>
        <translation>igual</translation>
    </message>
    <message>
        <source>not seen</source>
        <translation>sin ver</translation>
    </message>
    <message>
        <source>{0}{1}, {2}: {3} {4}, {5} {6} on {7}; one grade worse; left at {9} {10}.</source>
        <translation>{0}{1}, {2}: {3} {4}, {5} {6} el {7}; un grado peor; se deja en {9} {10}.</translation>
    </message>
    <message>
        <source>{0}{1}, {2}: {3} {4}, {5} {6} on {7}; one grade worse.</source>
        <translation>{0}{1}, {2}: {3} {4}, {5} {6} el {7}; un grado peor.</translation>
    </message>
    <message>
        <source>{0}{1}, {2}: {3} {4}, {5} {6} on {7}; {8} grades worse; left at {9} {10}.</source>
        <translation>{0}{1}, {2}: {3} {4}, {5} {6} el {7}; {8} grados peor; se deja en {9} {10}.</translation>
    </message>
    <message>
        <source>{0}{1}, {2}: {3} {4}, {5} {6} on {7}; {8} grades worse.</source>
        <translation>{0}{1}, {2}: {3} {4}, {5} {6} el {7}; {8} grados peor.</translation>
    </message>
    <message>
        <source>{0}{1}, {2}: {3} {4}, {5} {6} on {7} and no work on record in between; left at {9} {10}.</source>
        <translation>{0}{1}, {2}: {3} {4}, {5} {6} el {7} y ningún trabajo registrado de por medio; se deja en {9} {10}.</translation>
    </message>
    <message>
        <source>{0}{1}, {2}: {3} {4}, {5} {6} on {7} and no work on record in between.</source>
        <translation>{0}{1}, {2}: {3} {4}, {5} {6} el {7} y ningún trabajo registrado de por medio.</translation>
    </message>
    <message>
        <source>{0}{1}, {2}: {3} {4}, {5} {6} on {7}; left at {9} {10} after work.</source>
        <translation>{0}{1}, {2}: {3} {4}, {5} {6} el {7}; se deja en {9} {10} tras el trabajo.</translation>
    </message>
    <message>
        <source>{0}{1}, {2}: {3} {4} after work, {5} {6} on {7}.</source>
        <translation>{0}{1}, {2}: {3} {4} tras el trabajo, {5} {6} el {7}.</translation>
    </message>
    <message>
        <source>{0}{1}, {2}: {3} {4}, the same as on {7}; left at {9} {10}.</source>
        <translation>{0}{1}, {2}: {3} {4}, igual que el {7}; se deja en {9} {10}.</translation>
    </message>
    <message>
        <source>{0}{1}, {2}: {3} {4}, the same as on {7}.</source>
        <translation>{0}{1}, {2}: {3} {4}, igual que el {7}.</translation>
    </message>
    <message>
        <source>{0}{1}, {2}: not seen ({3}); never seen before.</source>
        <translation>{0}{1}, {2}: sin ver ({3}); nunca se había visto.</translation>
    </message>
    <message>
        <source>{0}{1}, {2}: not seen ({3}); {4} {5} when last seen on {6}.</source>
        <translation>{0}{1}, {2}: sin ver ({3}); {4} {5} la última vez que se vio, el {6}.</translation>
    </message>
    <message>
        <source>{0}{1}, {2}: {3} {4}, seen for the first time.</source>
        <translation>{0}{1}, {2}: {3} {4}, se ve por primera vez.</translation>
    </message>
    <message>
        <source>{0}{1}, {2}: {3} {4}, seen for the first time; left at {5} {6}.</source>
        <translation>{0}{1}, {2}: {3} {4}, se ve por primera vez; se deja en {5} {6}.</translation>
    </message>
    <message>
        <source>Fall checklist: one task</source>
        <translation>Lista de otoño: una tarea</translation>
    </message>
    <message>
        <source>Fall checklist: {0} tasks</source>
        <translation>Lista de otoño: {0} tareas</translation>
    </message>
    <message>
        <source>Spring checklist: one task</source>
        <translation>Lista de primavera: una tarea</translation>
    </message>
    <message>
        <source>Spring checklist: {0} tasks</source>
        <translation>Lista de primavera: {0} tareas</translation>
    </message>
    <message>
        <source>Last done on {0}; it was due by {1} and the season has passed.</source>
        <translation>Hecho por última vez el {0}; tocaba antes del {1} y la temporada ha pasado.</translation>
    </message>
    <message>
        <source>Once a year in its season; last done on {0}.</source>
        <translation>Una vez al año en su temporada; hecho por última vez el {0}.</translation>
    </message>
    <message>
        <source>Once a year in its season; none is on record yet.</source>
        <translation>Una vez al año en su temporada; aún no consta ninguna.</translation>
    </message>
    <message>
        <source>Promised on {0}.</source>
        <translation>Prometido el {0}.</translation>
    </message>
    <message>
        <source>Promised on {0}: {1}</source>
        <translation>Prometido el {0}: {1}</translation>
    </message>
    <message>
        <source>Promised: {0}</source>
        <translation>Prometido: {0}</translation>
    </message>
    <message>
        <source>{0}{1}, {2}: look again as promised</source>
        <translation>{0}{1}, {2}: volver a mirar según lo prometido</translation>
    </message>
    <message>
        <source>Look again as promised</source>
        <translation>Volver a mirar según lo prometido</translation>
    </message>
    <message>
        <source>{0}{1}, {2}: look again</source>
        <translation>{0}{1}, {2}: volver a mirar</translation>
    </message>
    <message>
        <source>{0}{1}, {2}: clean</source>
        <translation>{0}{1}, {2}: limpiar</translation>
    </message>
    <message>
        <source>{0}{1}, {2}: repair or replace</source>
        <translation>{0}{1}, {2}: reparar o sustituir</translation>
    </message>
    <message>
        <source>{0}{1}, {2}: see it dry</source>
        <translation>{0}{1}, {2}: ver en seco</translation>
    </message>
    <message>
        <source>{0}{1}, {2}: see it</source>
        <translation>{0}{1}, {2}: ver</translation>
    </message>
    <message>
        <source>{0}{1}: look again at {2} zones</source>
        <translation>{0}{1}: volver a mirar {2} zonas</translation>
    </message>
    <message>
        <source>{0}{1}: clean {2} zones</source>
        <translation>{0}{1}: limpiar {2} zonas</translation>
    </message>
    <message>
        <source>{0}{1}: repair or replace, {2} zones</source>
        <translation>{0}{1}: reparar o sustituir, {2} zonas</translation>
    </message>
    <message>
        <source>{0}{1}: see {2} zones dry</source>
        <translation>{0}{1}: ver {2} zonas en seco</translation>
    </message>
    <message>
        <source>{0}{1}: see {2} zones</source>
        <translation>{0}{1}: ver {2} zonas</translation>
    </message>
    <message>
        <source>See {0} zones of {1} parts for the first time</source>
        <translation>Ver por primera vez {0} zonas de {1} piezas</translation>
    </message>
    <message>
        <source>Look again at {0} zones of {1} parts</source>
        <translation>Volver a mirar {0} zonas de {1} piezas</translation>
    </message>
    <message>
        <source>Never seen yet, so nothing is known.</source>
        <translation>Nunca se ha visto, así que no se sabe nada.</translation>
    </message>
    <message>
        <source>Never seen yet; looked for in vain on {0} ({1}).</source>
        <translation>Nunca se ha visto; se intentó en vano el {0} ({1}).</translation>
    </message>
    <message>
        <source>Sound or worn when last seen on {0}; to be seen again by {1}.</source>
        <translation>Sano o usado la última vez que se vio, el {0}; hay que verlo otra vez antes del {1}.</translation>
    </message>
    <message>
        <source>{0} {1} when last seen on {2}; to be seen again by {3}.</source>
        <translation>{0} {1} la última vez que se vio, el {2}; hay que verlo otra vez antes del {3}.</translation>
    </message>
    <message>
        <source>{0} {1} when last seen on {2}; at this grade it is to be seen again by {3}.</source>
        <translation>{0} {1} la última vez que se vio, el {2}; con este grado hay que verlo otra vez antes del {3}.</translation>
    </message>
    <message>
        <source>{0} {1} when last seen on {2}; it can&apos;t wait longer than {3}.</source>
        <translation>{0} {1} la última vez que se vio, el {2}; no puede esperar más allá del {3}.</translation>
    </message>
    <message>
        <source>Wet when last seen on {2} ({0} {1}); only a dry surface shows its grade.</source>
        <translation>Mojado la última vez que se vio, el {2} ({0} {1}); solo una superficie seca muestra su grado.</translation>
    </message>
    <message>
        <source>{0} {1} when last seen on {2}; looked for in vain on {4} ({5}).</source>
        <translation>{0} {1} la última vez que se vio, el {2}; se intentó en vano el {4} ({5}).</translation>
    </message>
    <message>
        <source>The photograph {0} can&apos;t be read: put it back from an older backup, or check the disk.</source>
        <translation>No se puede leer la fotografía {0}: recupérela de una copia anterior o compruebe el disco.</translation>
    </message>
    <message>
        <source>The photograph {0} is damaged: put it back from an older backup.</source>
        <translation>La fotografía {0} está dañada: recupérela de una copia anterior.</translation>
    </message>
    <message>
        <source>The photo folder {0} can&apos;t be made: check who may write there.</source>
        <translation>No se puede crear la carpeta de fotos {0}: compruebe quién puede escribir ahí.</translation>
    </message>
    <message>
        <source>{0} is there already: choose another name.</source>
        <translation>{0} ya existe: elija otro nombre.</translation>
    </message>
    <message>
        <source>There is no folder {0}: make it first.</source>
        <translation>No existe la carpeta {0}: créela antes.</translation>
    </message>
    <message>
        <source>A text is not valid UTF-8 and would be changed by keeping it: type it again.</source>
        <translation>Un texto no es UTF-8 válido y cambiaría al guardarlo: escríbalo de nuevo.</translation>
    </message>
    <message>
        <source>A number is not finite: check what was typed.</source>
        <translation>Un número no es finito: compruebe lo escrito.</translation>
    </message>
    <message>
        <source>The SQLite driver of Qt is missing: install libqt6sql6-sqlite.</source>
        <translation>Falta el controlador SQLite de Qt: instale libqt6sql6-sqlite.</translation>
    </message>
    <message>
        <source>Qt&apos;s SQLite driver and this program use different SQLite libraries: install Qt and SQLite from one source.</source>
        <translation>El controlador SQLite de Qt y este programa usan bibliotecas SQLite distintas: instale Qt y SQLite de una misma fuente.</translation>
    </message>
    <message>
        <source>{0} can&apos;t be written safely here (journal mode {1}): move it to another disk.</source>
        <translation>{0} no se puede escribir aquí con seguridad (modo de diario {1}): llévelo a otro disco.</translation>
    </message>
    <message>
        <source>An earlier step failed and everything of this action was undone: try it again.</source>
        <translation>Un paso anterior falló y se deshizo todo lo de esta acción: inténtelo de nuevo.</translation>
    </message>
    <message>
        <source>The copy is not sound ({0}): the file itself may be damaged. Verify it.</source>
        <translation>La copia no está bien ({0}): el propio archivo puede estar dañado. Verifíquelo.</translation>
    </message>
    <message>
        <source>The file {0} holds &quot;{1}&quot; as {2}, which can&apos;t be understood: it is damaged or newer than this program. Open the latest backup.</source>
        <translation>El archivo {0} guarda &quot;{1}&quot; como {2}, que no se entiende: está dañado o es más nuevo que este programa. Abra la última copia de seguridad.</translation>
    </message>
    <message>
        <source>The disk is full: {0} could not be written. Make room and try again.</source>
        <translation>El disco está lleno: no se pudo escribir {0}. Haga sitio e inténtelo de nuevo.</translation>
    </message>
    <message>
        <source>{0} can&apos;t be written: check who may write to its folder.</source>
        <translation>{0} no se puede escribir: compruebe quién puede escribir en su carpeta.</translation>
    </message>
    <message>
        <source>{0} could not be written ({1}): check the disk and try again.</source>
        <translation>{0} no se pudo escribir ({1}): compruebe el disco e inténtelo de nuevo.</translation>
    </message>
    <message>
        <source>There is no file {0}: check the name and the folder.</source>
        <translation>No existe el archivo {0}: compruebe el nombre y la carpeta.</translation>
    </message>
    <message>
        <source>{0} is a folder: name the record file in it.</source>
        <translation>{0} es una carpeta: indique el archivo de registro que hay en ella.</translation>
    </message>
    <message>
        <source>{0} can&apos;t be read: check who may read it.</source>
        <translation>{0} no se puede leer: compruebe quién puede leerlo.</translation>
    </message>
    <message>
        <source>{0} is empty: it holds no records. Open another file or a backup.</source>
        <translation>{0} está vacío: no contiene registros. Abra otro archivo o una copia de seguridad.</translation>
    </message>
    <message>
        <source>{0} is not a Padside record file, or its beginning is damaged: open another file.</source>
        <translation>{0} no es un archivo de registro de Padside, o su comienzo está dañado: abra otro archivo.</translation>
    </message>
    <message>
        <source>{0} is a database of another program: it was left alone. Open a Padside record file.</source>
        <translation>{0} es una base de datos de otro programa: no se ha tocado. Abra un archivo de registro de Padside.</translation>
    </message>
    <message>
        <source>{0} could not be brought to version {1}: records would point at nothing. It was left as it was.</source>
        <translation>{0} no se pudo llevar a la versión {1}: habría registros que no apuntan a nada. Se dejó como estaba.</translation>
    </message>
    <message>
        <source>The file {0} is damaged (its tables are missing): leave it as it is and open the latest backup.</source>
        <translation>El archivo {0} está dañado (faltan sus tablas): déjelo como está y abra la última copia de seguridad.</translation>
    </message>
    <message>
        <source>{0} was written by an older Padside and must be brought up to date first, which needs writing to it: open it once where it can be written to.</source>
        <translation>{0} lo escribió un Padside más antiguo y antes hay que ponerlo al día, lo que exige escribir en él: ábralo una vez donde se pueda escribir.</translation>
    </message>
    <message>
        <source>{0} was written by a newer Padside (version {1} of the file, this one knows {2}): it is open for reading only. Update the program to write to it.</source>
        <translation>{0} lo escribió un Padside más nuevo (versión {1} del archivo, este conoce la {2}): está abierto solo para leer. Actualice el programa para escribir en él.</translation>
    </message>
    <message>
        <source>{0} can&apos;t be written to: it is open for reading only. Check who may write to the file and its folder.</source>
        <translation>No se puede escribir en {0}: está abierto solo para leer. Compruebe quién puede escribir en el archivo y su carpeta.</translation>
    </message>
    <message>
        <source>The changes to the catalogue are not a JSON object: correct the text.</source>
        <translation>Los cambios al catálogo no son un objeto JSON: corrija el texto.</translation>
    </message>
    <message>
        <source>The photograph is empty: choose another file.</source>
        <translation>La fotografía está vacía: elija otro archivo.</translation>
    </message>
    <message>
        <source>{0} is open for reading only: a photograph can&apos;t be added.</source>
        <translation>{0} está abierto solo para leer: no se puede añadir una fotografía.</translation>
    </message>
    <message>
        <source>There is no unit with the key {0} in this file.</source>
        <translation>En este archivo no hay ninguna unidad con la clave {0}.</translation>
    </message>
    <message>
        <source>The zone {0} belongs to another part: add it there.</source>
        <translation>La zona {0} pertenece a otra pieza: añádala allí.</translation>
    </message>
    <message>
        <source>What was to be changed is not in the file: add it first.</source>
        <translation>Lo que se iba a cambiar no está en el archivo: añádalo antes.</translation>
    </message>
    <message>
        <source>The tag {0} is taken by another unit: choose another one.</source>
        <translation>La etiqueta {0} la tiene otra unidad: elija otra.</translation>
    </message>
    <message>
        <source>The new part does not name the part it replaces: name it.</source>
        <translation>La pieza nueva no dice a qué pieza sustituye: indíquelo.</translation>
    </message>
    <message>
        <source>The part to be replaced is not fitted to this unit: choose one that is.</source>
        <translation>La pieza que se iba a sustituir no está montada en esta unidad: elija una que lo esté.</translation>
    </message>
    <message>
        <source>The visit is closed: what was entered there no longer changes. Enter a correction with a reason instead.</source>
        <translation>La visita está cerrada: lo anotado en ella ya no cambia. Anote en su lugar una corrección con su motivo.</translation>
    </message>
    <message>
        <source>The visit is still open: change the entry itself. A correction is for a closed visit.</source>
        <translation>La visita sigue abierta: cambie la propia anotación. Una corrección es para una visita cerrada.</translation>
    </message>
    <message>
        <source>The visit this belongs to is not in the file: open it first.</source>
        <translation>La visita a la que esto pertenece no está en el archivo: ábrala antes.</translation>
    </message>
    <message>
        <source>The entry names another unit or another day than its visit: enter it at the visit it belongs to.</source>
        <translation>La anotación nombra otra unidad u otro día que su visita: anótela en la visita a la que pertenece.</translation>
    </message>
    <message>
        <source>A correction must point at an entry of the same visit: choose the entry it stands for.</source>
        <translation>Una corrección debe apuntar a una anotación de la misma visita: elija la anotación a la que sustituye.</translation>
    </message>
    <message>
        <source>A visit keeps its unit and its day: discard it and open another.</source>
        <translation>Una visita conserva su unidad y su día: descártela y abra otra.</translation>
    </message>
    <message>
        <source>A visit begins open: close it once its entries are in.</source>
        <translation>Una visita empieza abierta: ciérrela cuando estén sus anotaciones.</translation>
    </message>
    <message>
        <source>The follow-up was promised or settled at a closed visit: only an open visit can settle it.</source>
        <translation>El compromiso se prometió o se cumplió en una visita cerrada: solo una visita abierta puede darlo por cumplido.</translation>
    </message>
    <message>
        <source>This unit already has an open visit: close or discard that one first.</source>
        <translation>Esta unidad ya tiene una visita abierta: ciérrela o descártela antes.</translation>
    </message>
    <message>
        <source>That entry was corrected already: correct the correction instead.</source>
        <translation>Esa anotación ya se corrigió: corrija la corrección.</translation>
    </message>
    <message>
        <source>Another unit has this tag already: choose another tag.</source>
        <translation>Otra unidad ya tiene esta etiqueta: elija otra.</translation>
    </message>
    <message>
        <source>The site has no name: give it one.</source>
        <translation>El emplazamiento no tiene nombre: déle uno.</translation>
    </message>
    <message>
        <source>The unit has no tag: give it one.</source>
        <translation>La unidad no tiene etiqueta: déle una.</translation>
    </message>
    <message>
        <source>A correction needs a reason: say why the entry was wrong.</source>
        <translation>Una corrección necesita un motivo: diga por qué la anotación era errónea.</translation>
    </message>
    <message>
        <source>The part would be removed before it was fitted: check the two dates.</source>
        <translation>La pieza se retiraría antes de haberse montado: compruebe las dos fechas.</translation>
    </message>
    <message>
        <source>The follow-up would end before it begins: check its earliest and latest day.</source>
        <translation>El compromiso terminaría antes de empezar: compruebe su primer y su último día.</translation>
    </message>
    <message>
        <source>The follow-up does not say what to look at: write it down.</source>
        <translation>El compromiso no dice qué hay que mirar: escríbalo.</translation>
    </message>
    <message>
        <source>A mass of refrigerant can&apos;t be negative: check the number.</source>
        <translation>Una masa de refrigerante no puede ser negativa: compruebe el número.</translation>
    </message>
    <message>
        <source>That points at something the file does not have, or takes away something still in use.</source>
        <translation>Eso apunta a algo que el archivo no tiene, o quita algo que aún se usa.</translation>
    </message>
    <message>
        <source>A record with the same key is in the file already ({0}).</source>
        <translation>Ya hay en el archivo un registro con la misma clave ({0}).</translation>
    </message>
    <message>
        <source>A value is missing or outside what the record allows ({0}).</source>
        <translation>Falta un valor o está fuera de lo que admite el registro ({0}).</translation>
    </message>
    <message>
        <source>The disk failed while {0} was read: check the disk, then open the latest backup.</source>
        <translation>El disco falló mientras se leía {0}: compruebe el disco y luego abra la última copia de seguridad.</translation>
    </message>
    <message>
        <source>The disk failed while {0} was written: this step is not confirmed. Check the disk, open the file again and see whether it is there.</source>
        <translation>El disco falló mientras se escribía {0}: este paso no está confirmado. Compruebe el disco, abra el archivo otra vez y vea si está.</translation>
    </message>
    <message>
        <source>The disk is full: {0} was left as it was. Make room and try again.</source>
        <translation>El disco está lleno: {0} se dejó como estaba. Haga sitio e inténtelo de nuevo.</translation>
    </message>
    <message>
        <source>{0} can only be read, not written: check who may write to the file and its folder.</source>
        <translation>{0} solo se puede leer, no escribir: compruebe quién puede escribir en el archivo y su carpeta.</translation>
    </message>
    <message>
        <source>Another program is using {0}: close it there or wait, then try again.</source>
        <translation>Otro programa está usando {0}: ciérrelo allí o espere, e inténtelo de nuevo.</translation>
    </message>
    <message>
        <source>The file {0} is damaged: leave it as it is and open the latest backup.</source>
        <translation>El archivo {0} está dañado: déjelo como está y abra la última copia de seguridad.</translation>
    </message>
    <message>
        <source>{0} can&apos;t be opened: check that the file and its folder are there and may be used.</source>
        <translation>{0} no se puede abrir: compruebe que el archivo y su carpeta están ahí y se pueden usar.</translation>
    </message>
    <message>
        <source>There is not enough memory to use {0}: close other programs and try again.</source>
        <translation>No hay memoria suficiente para usar {0}: cierre otros programas e inténtelo de nuevo.</translation>
    </message>
    <message>
        <source>That text is too long to be kept: shorten it.</source>
        <translation>Ese texto es demasiado largo para guardarlo: acórtelo.</translation>
    </message>
    <message>
        <source>{0} could not be used: {1}.</source>
        <translation>{0} no se pudo usar: {1}.</translation>
    </message>
    <message>
        <source>The {1} {0} is not dated as its visit: restore the latest backup.</source>
        <translation>El registro {1} {0} no lleva la fecha de su visita: recupere la última copia de seguridad.</translation>
    </message>
    <message>
        <source>The {1} {0} corrects something that is not there: restore the latest backup.</source>
        <translation>El registro {1} {0} corrige algo que no está: recupere la última copia de seguridad.</translation>
    </message>
    <message>
        <source>The {1} {0} is a correction without a reason or at an open visit: restore the latest backup.</source>
        <translation>El registro {1} {0} es una corrección sin motivo o en una visita abierta: recupere la última copia de seguridad.</translation>
    </message>
    <message>
        <source>The {1} {0} is in the file twice: restore the latest backup.</source>
        <translation>El registro {1} {0} está dos veces en el archivo: recupere la última copia de seguridad.</translation>
    </message>
    <message>
        <source>The {1} {0} names a zone of another unit: restore the latest backup.</source>
        <translation>El registro {1} {0} nombra una zona de otra unidad: recupere la última copia de seguridad.</translation>
    </message>
    <message>
        <source>The {1} {0} names a zone of another part: correct it.</source>
        <translation>El registro {1} {0} nombra una zona de otra pieza: corríjalo.</translation>
    </message>
    <message>
        <source>The zone {0} ({1}) belongs to no part of its unit: restore the latest backup.</source>
        <translation>La zona {0} ({1}) no pertenece a ninguna pieza de su unidad: recupere la última copia de seguridad.</translation>
    </message>
    <message>
        <source>The file is damaged ({0}): leave it as it is and open the latest backup.</source>
        <translation>El archivo está dañado ({0}): déjelo como está y abra la última copia de seguridad.</translation>
    </message>
    <message>
        <source>In {0}, {2} rows point at a {1} that is not there: restore the latest backup.</source>
        <translation>En {0}, {2} filas apuntan a {1} que no está: recupere la última copia de seguridad.</translation>
    </message>
    <message>
        <source>The closed visit of unit {0} on {1} was changed after it was closed: compare it with a backup.</source>
        <translation>La visita cerrada de la unidad {0} del {1} se cambió después de cerrarla: compárela con una copia de seguridad.</translation>
    </message>
    <message>
        <source>The photograph {0} of unit {1} is missing ({2}): put it back from a backup.</source>
        <translation>Falta la fotografía {0} de la unidad {1} ({2}): recupérela de una copia de seguridad.</translation>
    </message>
    <message>
        <source>The photograph {0} of unit {1} can&apos;t be read ({2}): check who may read it.</source>
        <translation>No se puede leer la fotografía {0} de la unidad {1} ({2}): compruebe quién puede leerla.</translation>
    </message>
    <message>
        <source>The photograph {0} of unit {1} is damaged ({2}): put it back from a backup.</source>
        <translation>La fotografía {0} de la unidad {1} está dañada ({2}): recupérela de una copia de seguridad.</translation>
    </message>
    <message>
        <source>The visit is not in the file: open it first.</source>
        <translation>La visita no está en el archivo: ábrala antes.</translation>
    </message>
    <message>
        <source>A cost of {0} can&apos;t be kept: give it with at most two decimals.</source>
        <translation>Un coste de {0} no se puede guardar: indíquelo con dos decimales como mucho.</translation>
    </message>
    <message>
        <source>The entry is not in the file: it may have been removed before.</source>
        <translation>La anotación no está en el archivo: puede que se quitara antes.</translation>
    </message>
    <message>
        <source>The photograph {0} is not in the photo folder ({1}): add the picture again.</source>
        <translation>La fotografía {0} no está en la carpeta de fotos ({1}): añada la imagen otra vez.</translation>
    </message>
    <message>
        <source>Nothing has been measured yet.</source>
        <translation>Todavía no se ha medido nada.</translation>
    </message>
    <message>
        <source>Values so far: {0}. A trend needs at least {1}, so only the changes between them are shown.</source>
        <translation>Valores hasta ahora: {0}. Una tendencia necesita al menos {1}, así que solo se muestran los cambios entre ellos.</translation>
    </message>
    <message>
        <source>Values so far: {0}. A trend is worked out for at most {1}.</source>
        <translation>Valores hasta ahora: {0}. Una tendencia se calcula con {1} como máximo.</translation>
    </message>
    <message>
        <source>All {0} values are of one day, so there is no trend over time.</source>
        <translation>Los {0} valores son de un mismo día, así que no hay tendencia en el tiempo.</translation>
    </message>
    <message>
        <source>Whole unit</source>
        <translation>Toda la unidad</translation>
    </message>
    <message>
        <source>whole part</source>
        <translation>toda la pieza</translation>
    </message>
    <message>
        <source>visits</source>
        <translation>visitas</translation>
    </message>
    <message>
        <source>refrigerant</source>
        <translation>refrigerante</translation>
    </message>
    <message>
        <source>“{0}” is empty. Choose another photo.</source>
        <translation>«{0}» está vacío. Elija otra foto.</translation>
    </message>
    <message>
        <source>“{0}” is larger than 100 MB. Save it smaller and add it again.</source>
        <translation>«{0}» pasa de 100 MB. Guárdela más pequeña y añádala de nuevo.</translation>
    </message>
    <message>
        <source>“{0}” is a HEIC photo, which can&apos;t be read yet. Save it as JPEG and add it again.</source>
        <translation>«{0}» es una foto HEIC, que aún no se puede leer. Guárdela como JPEG y añádala de nuevo.</translation>
    </message>
    <message>
        <source>“{0}” is not a photo that can be read here. Use JPEG, PNG, WebP, TIFF or GIF.</source>
        <translation>«{0}» no es una foto que se pueda leer aquí. Use JPEG, PNG, WebP, TIFF o GIF.</translation>
    </message>
    <message>
        <source>“{0}” is damaged and can&apos;t be shown. Take it from the camera again.</source>
        <translation>«{0}» está dañada y no se puede mostrar. Tómela otra vez de la cámara.</translation>
    </message>
    <message>
        <source>No small picture could be made of “{0}”. Add it again.</source>
        <translation>No se pudo hacer una imagen pequeña de «{0}». Añádala de nuevo.</translation>
    </message>
    <message>
        <source>“{0}” can&apos;t be opened: {1}. Check that it is still there.</source>
        <translation>«{0}» no se puede abrir: {1}. Compruebe que sigue ahí.</translation>
    </message>
    <message>
        <source>“{0}” is not a file on this computer. Save it first, then add it.</source>
        <translation>«{0}» no es un archivo de este equipo. Guárdelo primero y luego añádalo.</translation>
    </message>
    <message>
        <source>This visit is no longer in the file. Go back to the unit and choose another.</source>
        <translation>Esta visita ya no está en el archivo. Vuelva a la unidad y elija otra.</translation>
    </message>
    <message>
        <source>This visit is closed. Choose “Correct an entry” and say why, then enter it again.</source>
        <translation>Esta visita está cerrada. Elija «Corregir una anotación», diga por qué y anótelo de nuevo.</translation>
    </message>
    <message>
        <source>Nothing was entered here at this visit, so there is nothing to correct. Enter it at a new visit.</source>
        <translation>Aquí no se anotó nada en esta visita, así que no hay nada que corregir. Anótelo en una visita nueva.</translation>
    </message>
    <message>
        <source>Follow local codes and the maker&apos;s instructions; licensed work only.</source>
        <translation>Siga las normas locales y las instrucciones del fabricante; trabajo solo para profesionales autorizados.</translation>
    </message>
    <message>
        <source>Follow local codes and the maker&apos;s instructions.</source>
        <translation>Siga las normas locales y las instrucciones del fabricante.</translation>
    </message>
    <message>
        <source>Your own changes to the catalogue are left out until they fit again; they are still kept.</source>
        <translation>Sus cambios propios al catálogo se dejan fuera hasta que vuelvan a encajar; se conservan.</translation>
    </message>
    <message>
        <source>There is no unit “{0}”: the file has no units yet.</source>
        <translation>No hay ninguna unidad «{0}»: el archivo todavía no tiene unidades.</translation>
    </message>
    <message>
        <source>There is no unit “{0}” in this file. Its units are {1}.</source>
        <translation>No hay ninguna unidad «{0}» en este archivo. Sus unidades son {1}.</translation>
    </message>
    <message>
        <source>“{0}” is not a date. Write it as year-month-day, like 2026-05-04.</source>
        <translation>«{0}» no es una fecha. Escríbala como año-mes-día, por ejemplo 2026-05-04.</translation>
    </message>
    <message>
        <source>Unit “{0}” has no visits yet.</source>
        <translation>La unidad «{0}» todavía no tiene visitas.</translation>
    </message>
    <message>
        <source>Unit “{0}” has no closed visit yet. Name the open one with --visit {1}.</source>
        <translation>La unidad «{0}» todavía no tiene ninguna visita cerrada. Nombre la abierta con --visit {1}.</translation>
    </message>
    <message>
        <source>Unit “{0}” was not visited on {1}. Its visits: {2}.</source>
        <translation>La unidad «{0}» no se visitó el {1}. Sus visitas: {2}.</translation>
    </message>
    <message>
        <source>Name</source>
        <translation>Nombre</translation>
    </message>
    <message>
        <source>Grade {0} {1}</source>
        <translation>Grado {0} {1}</translation>
    </message>
    <message>
        <source>What keeps it alive</source>
        <translation>Qué la mantiene viva</translation>
    </message>
    <message>
        <source>Median life in years</source>
        <translation>Vida mediana en años</translation>
    </message>
    <message>
        <source>Source of the median life</source>
        <translation>Fuente de la vida mediana</translation>
    </message>
    <message>
        <source>Zone “{0}”</source>
        <translation>Zona «{0}»</translation>
    </message>
    <message>
        <source>Zone “{0}”, grade {1} {2}</source>
        <translation>Zona «{0}», grado {1} {2}</translation>
    </message>
    <message>
        <source>Task in spring</source>
        <translation>Tarea de primavera</translation>
    </message>
    <message>
        <source>Task in fall</source>
        <translation>Tarea de otoño</translation>
    </message>
    <message>
        <source>{0}{1}, {2}: {3} {4} on {5}. Once spent, this part normally ends the unit; a spare is {6}.</source>
        <translation>{0}{1}, {2}: {3} {4} el {5}. Una vez agotada, esta pieza normalmente acaba con la unidad; repuesto: {6}.</translation>
    </message>
    <message>
        <source>{0}{1}, {2}: {3} {4} on {5}. A spare is {6}.</source>
        <translation>{0}{1}, {2}: {3} {4} el {5}. Repuesto: {6}.</translation>
    </message>
    <message>
        <source>For one check it would be too early; it waits for another trip.</source>
        <translation>Para una revisión sería demasiado pronto; espera a otro viaje.</translation>
    </message>
    <message>
        <source>For {0} checks it would be too early; they wait for another trip.</source>
        <translation>Para {0} revisiones sería demasiado pronto; esperan a otro viaje.</translation>
    </message>
    <message>
        <source>It saves a trip.</source>
        <translation>Ahorra un viaje.</translation>
    </message>
    <message>
        <source>It needs one more trip, on {0}.</source>
        <translation>Hace falta un viaje más, el {0}.</translation>
    </message>
    <message>
        <source>Trips more than now: {0}.</source>
        <translation>Viajes de más: {0}.</translation>
    </message>
    <message>
        <source>Costs nothing: every check stays within its window.</source>
        <translation>No cuesta nada: toda revisión queda dentro de su margen.</translation>
    </message>
    <message>
        <source>{0} can&apos;t be made, so it can&apos;t be said whether another program has the record open: check that the folder is there and the disk is not full.</source>
        <translation>No se puede crear {0}, así que no se sabe si otro programa tiene abierto el registro: compruebe que la carpeta está ahí y el disco no está lleno.</translation>
    </message>
    <message>
        <source>{0} is already open in another Padside on this computer (process {1}, since {2}). Go on in that window, or close it first.</source>
        <translation>{0} ya está abierto en otro Padside de este equipo (proceso {1}, desde {2}). Siga en esa ventana, o ciérrela antes.</translation>
    </message>
    <message>
        <source>{0} is open in Padside on the computer “{1}” (process {2}, since {3}). Close it there first: two programs writing to one file over a network can damage it.</source>
        <translation>{0} está abierto en Padside en el equipo «{1}» (proceso {2}, desde {3}). Ciérrelo allí antes: dos programas que escriben en un mismo archivo por la red pueden dañarlo.</translation>
    </message>
    <message>
        <source>worst of its zones</source>
        <translation>la peor de sus zonas</translation>
    </message>
    <message>
        <source>The PDF was not written: there is no folder {0}. Choose a folder that exists.</source>
        <translation>No se escribió el PDF: no existe la carpeta {0}. Elija una carpeta que exista.</translation>
    </message>
    <message>
        <source>The PDF was not written: {0} is a folder. Choose a file name inside it.</source>
        <translation>No se escribió el PDF: {0} es una carpeta. Elija un nombre de archivo dentro de ella.</translation>
    </message>
    <message>
        <source>The PDF was not written: {0} is a device, not a file. Choose another name.</source>
        <translation>No se escribió el PDF: {0} es un dispositivo, no un archivo. Elija otro nombre.</translation>
    </message>
    <message>
        <source>The PDF was not written: {0} can&apos;t be opened for writing ({1}). Choose another folder, or ask for the right to write there.</source>
        <translation>No se escribió el PDF: {0} no se puede abrir para escribir ({1}). Elija otra carpeta o pida permiso para escribir ahí.</translation>
    </message>
    <message>
        <source>The PDF was not written to {0} ({1}). Nothing was left behind; free some space or choose another place, and export again.</source>
        <translation>No se escribió el PDF en {0} ({1}). No quedó nada a medias; libere espacio o elija otro lugar y expórtelo de nuevo.</translation>
    </message>
    <message>
        <source>The PDF was not written: its pages can&apos;t be painted. Nothing was left at {0}.</source>
        <translation>No se escribió el PDF: no se pueden pintar sus páginas. No quedó nada en {0}.</translation>
    </message>
    <message>
        <source>There was no file {0}: this is a new, empty record of that name.</source>
        <translation>No existía el archivo {0}: este es un registro nuevo y vacío con ese nombre.</translation>
    </message>
    <message>
        <source>One check would come a day later than it should.</source>
        <translation>Una revisión llegaría un día más tarde de lo debido.</translation>
    </message>
    <message>
        <source>One check would come {0} days later than it should.</source>
        <translation>Una revisión llegaría {0} días más tarde de lo debido.</translation>
    </message>
    <message>
        <source>{0} checks would come later than they should, the worst by {1} days.</source>
        <translation>{0} revisiones llegarían más tarde de lo debido, la peor por {1} días.</translation>
    </message>
    <message>
        <source>site</source>
        <translation>emplazamiento</translation>
    </message>
    <message>
        <source>address</source>
        <translation>dirección</translation>
    </message>
    <message>
        <source>tag</source>
        <translation>etiqueta</translation>
    </message>
    <message>
        <source>kind</source>
        <translation>clase</translation>
    </message>
    <message>
        <source>maker</source>
        <translation>fabricante</translation>
    </message>
    <message>
        <source>model</source>
        <translation>modelo</translation>
    </message>
    <message>
        <source>serial number</source>
        <translation>número de serie</translation>
    </message>
    <message>
        <source>place</source>
        <translation>lugar</translation>
    </message>
    <message>
        <source>metering</source>
        <translation>expansión</translation>
    </message>
    <message>
        <source>installed</source>
        <translation>instalada</translation>
    </message>
    <message>
        <source>note</source>
        <translation>nota</translation>
    </message>
    <message>
        <source>Row {0}: no site is named.</source>
        <translation>Fila {0}: no se nombra ningún emplazamiento.</translation>
    </message>
    <message>
        <source>Row {0}: there is no tag.</source>
        <translation>Fila {0}: falta la etiqueta.</translation>
    </message>
    <message>
        <source>Row {0}: the tag {1} is taken by a unit in the record.</source>
        <translation>Fila {0}: la etiqueta {1} la tiene una unidad del registro.</translation>
    </message>
    <message>
        <source>Row {0}: the tag {1} is in row {2} already.</source>
        <translation>Fila {0}: la etiqueta {1} ya está en la fila {2}.</translation>
    </message>
    <message>
        <source>Row {0}: there is no kind. Known are: {1}.</source>
        <translation>Fila {0}: falta la clase. Se conocen: {1}.</translation>
    </message>
    <message>
        <source>Row {0}: the kind “{1}” is not known. Known are: {2}.</source>
        <translation>Fila {0}: la clase «{1}» no se conoce. Se conocen: {2}.</translation>
    </message>
    <message>
        <source>Row {0}: the metering “{1}” is not known. Known are: {2}.</source>
        <translation>Fila {0}: la expansión «{1}» no se conoce. Se conocen: {2}.</translation>
    </message>
    <message>
        <source>Row {0}, installed: “{1}” can&apos;t be the day. Write it like 2008-06-14, 2008-06 or 2008, from 1900 to today.</source>
        <translation>Fila {0}, instalada: «{1}» no puede ser el día. Escríbalo como 2008-06-14, 2008-06 o 2008, desde 1900 hasta hoy.</translation>
    </message>
    <message>
        <source>“{0}” is not a date that can be read: write it like 2008-06-14, 2008-06 or 2008.</source>
        <translation>«{0}» no es una fecha legible: escríbala como 2008-06-14, 2008-06 o 2008.</translation>
    </message>
    <message>
        <source>{0} lies in the future: check the date.</source>
        <translation>{0} está en el futuro: revise la fecha.</translation>
    </message>
    <message>
        <source>“{0}” lies before 1900: check the year.</source>
        <translation>«{0}» es anterior a 1900: revise el año.</translation>
    </message>
    <message>
        <source>This unit was visited, so it stays in the record: retire it instead.</source>
        <translation>Esta unidad se visitó, así que queda en el registro: retírela en su lugar.</translation>
    </message>
    <message>
        <source>This unit is not in the file any more.</source>
        <translation>Esta unidad ya no está en el archivo.</translation>
    </message>
    <message>
        <source>This site has units: move or remove them first.</source>
        <translation>Este emplazamiento tiene unidades: trasládelas o quítelas antes.</translation>
    </message>
    <message>
        <source>This site is not in the file any more.</source>
        <translation>Este emplazamiento ya no está en el archivo.</translation>
    </message>
    <message>
        <source>This part replaced no other: there is no replacement to take back.</source>
        <translation>Esta pieza no sustituyó a ninguna otra: no hay sustitución que deshacer.</translation>
    </message>
    <message>
        <source>light</source>
        <translation>claro</translation>
    </message>
    <message>
        <source>dark</source>
        <translation>oscuro</translation>
    </message>
    <message>
        <source>sunlight</source>
        <translation>sol</translation>
    </message>
    <message>
        <source>paper</source>
        <translation>papel</translation>
    </message>
    <message>
        <source>Give the first tag.</source>
        <translation>Dé la primera etiqueta.</translation>
    </message>
    <message>
        <source>“{0}” has no number to count up from: write one, like {0}-1.</source>
        <translation>«{0}» no tiene un número desde el que contar: escriba uno, como {0}-1.</translation>
    </message>
    <message>
        <source>A site needs a name.</source>
        <translation>Un emplazamiento necesita un nombre.</translation>
    </message>
    <message>
        <source>This must lie between {0} and {1}.</source>
        <translation>Debe estar entre {0} y {1}.</translation>
    </message>
    <message>
        <source>This can&apos;t be less than nothing.</source>
        <translation>No puede ser menos que cero.</translation>
    </message>
    <message>
        <source>“{0}” is no week: write a number from 1 to 53, as calendars number them (ISO 8601).</source>
        <translation>«{0}» no es una semana: escriba un número de 1 a 53, como las numeran los calendarios (ISO 8601).</translation>
    </message>
    <message>
        <source>The last week comes before the first, week {0}.</source>
        <translation>La última semana es anterior a la primera, la semana {0}.</translation>
    </message>
    <message>
        <source>A unit needs a tag: what you call it, like RT-1.</source>
        <translation>Una unidad necesita una etiqueta: cómo la llama usted, como RT-1.</translation>
    </message>
    <message>
        <source>Choose what kind of unit it is.</source>
        <translation>Elija qué clase de unidad es.</translation>
    </message>
    <message>
        <source>A visit is open at {0}: close it, then retire the unit.</source>
        <translation>Hay una visita abierta en {0}: ciérrela y después retire la unidad.</translation>
    </message>
    <message>
        <source>{0} was installed on {1}: it can&apos;t be retired before.</source>
        <translation>{0} se instaló el {1}: no se puede retirar antes.</translation>
    </message>
    <message>
        <source>{0} was visited on {1}: it can&apos;t be retired before.</source>
        <translation>{0} se visitó el {1}: no se puede retirar antes.</translation>
    </message>
    <message>
        <source>Name the site it stands at.</source>
        <translation>Nombre el emplazamiento donde está.</translation>
    </message>
    <message>
        <source>The sample could not be put at {0}: is the disk full, or the folder closed to you?</source>
        <translation>La muestra no se pudo poner en {0}: ¿está lleno el disco o no tiene acceso a la carpeta?</translation>
    </message>
    <message>
        <source>The wet bulb ({0}) is above the dry bulb ({1}), which never happens. Look at the two again.</source>
        <translation>El bulbo húmedo ({0}) está por encima del bulbo seco ({1}), lo que nunca ocurre. Revise los dos.</translation>
    </message>
    <message>
        <source>A wet bulb of {0} is colder than even dry air of {1} makes it. Look at the two again.</source>
        <translation>Un bulbo húmedo de {0} es más frío de lo que lo deja incluso el aire seco a {1}. Revise los dos.</translation>
    </message>
    <message>
        <source>The dew point ({0}) is above the dry bulb ({1}), which never happens. Look at the two again.</source>
        <translation>El punto de rocío ({0}) está por encima del bulbo seco ({1}), lo que nunca ocurre. Revise los dos.</translation>
    </message>
    <message>
        <source>The dew point ({0}) is above the wet bulb ({1}), which never happens. Look at the two again.</source>
        <translation>El punto de rocío ({0}) está por encima del bulbo húmedo ({1}), lo que nunca ocurre. Revise los dos.</translation>
    </message>
    <message>
        <source>A wet bulb of {0} beside a dew point of {1} asks for air hotter than {2}.</source>
        <translation>Un bulbo húmedo de {0} con un punto de rocío de {1} supone un aire a más de {2}.</translation>
    </message>
    <message>
        <source>A dew point of {0} at {1} % relative humidity asks for air hotter than {2}.</source>
        <translation>Un punto de rocío de {0} con una humedad relativa del {1} % supone un aire a más de {2}.</translation>
    </message>
    <message>
        <source>A wet bulb of {0} at {1} % relative humidity asks for air hotter than {2}.</source>
        <translation>Un bulbo húmedo de {0} con una humedad relativa del {1} % supone un aire a más de {2}.</translation>
    </message>
    <message>
        <source>The surface&apos;s temperature must lie between {0} and {1}. Look at the value and its unit.</source>
        <translation>La temperatura de la superficie debe estar entre {0} y {1}. Revise el valor y su unidad.</translation>
    </message>
    <message>
        <source>The product&apos;s drying time must be above 0 and at most 1000 hours.</source>
        <translation>El tiempo de secado del producto debe ser mayor que 0 y de 1000 horas como máximo.</translation>
    </message>
    <message>
        <source>The product&apos;s highest humidity must lie between 0 and 100 %.</source>
        <translation>La humedad máxima del producto debe estar entre 0 y 100 %.</translation>
    </message>
    <message>
        <source>The product&apos;s temperatures must lie between {0} and {1}.</source>
        <translation>Las temperaturas del producto deben estar entre {0} y {1}.</translation>
    </message>
    <message>
        <source>The hours the unit runs must be times of day, from 00:00 to 23:59.</source>
        <translation>Las horas de marcha de la unidad deben ser horas del día, de 00:00 a 23:59.</translation>
    </message>
    <message>
        <source>The surface is {0} below the dew point of {1}: it sweats.</source>
        <translation>La superficie está {0} por debajo del punto de rocío de {1}: suda.</translation>
    </message>
    <message>
        <source>The surface is only {0} above the dew point of {1}; it must be at least {2} above it.</source>
        <translation>La superficie está solo {0} por encima del punto de rocío de {1}; debe estarlo al menos {2}.</translation>
    </message>
    <message>
        <source>The air is too humid: {0}, at most {1}.</source>
        <translation>El aire está demasiado húmedo: {0}, como máximo {1}.</translation>
    </message>
    <message>
        <source>It was found {0}: a surface is coated dry.</source>
        <translation>Estado hallado: {0}; una superficie se pinta seca.</translation>
    </message>
    <message>
        <source>Too cold for the product: {0}, at least {1}.</source>
        <translation>Demasiado frío para el producto: {0}, como mínimo {1}.</translation>
    </message>
    <message>
        <source>Whether it is dry is not recorded: only if it is dry all over.</source>
        <translation>No consta si está seca: solo si está seca por completo.</translation>
    </message>
    <message>
        <source>When the unit runs again is not known: only if it is kept off until the coating is dry.</source>
        <translation>No se sabe cuándo vuelve a funcionar la unidad: solo si queda apagada hasta que seque el revestimiento.</translation>
    </message>
    <message>
        <source>How long it takes to dry is not known: only if the unit is kept off until the data sheet&apos;s time has passed.</source>
        <translation>No se sabe cuánto tarda en secar: solo si la unidad queda apagada hasta que pase el tiempo de la ficha técnica.</translation>
    </message>
    <message>
        <source>It would still be wet when the unit runs (usually {0} to {1}): only if the unit is kept off until then.</source>
        <translation>Aún estaría húmedo cuando funcione la unidad (normalmente de {0} a {1}): solo si se mantiene apagada hasta que seque.</translation>
    </message>
    <message>
        <source>Air {0}, {1}; surface {2}, {4} below the dew point of {3}.</source>
        <translation>Aire {0}, {1}; superficie {2}, {4} por debajo del punto de rocío de {3}.</translation>
    </message>
    <message>
        <source>Air {0}, {1}; surface {2}, {4} above the dew point of {3}.</source>
        <translation>Aire {0}, {1}; superficie {2}, {4} por encima del punto de rocío de {3}.</translation>
    </message>
    <message>
        <source>The {0} is not a number.</source>
        <translation>No es un número: {0}.</translation>
    </message>
    <message>
        <source>The {0} of {1} is outside {2} to {3}, where air can be worked out.</source>
        <translation>Fuera del intervalo en que se puede calcular el aire, de {2} a {3}: {0}, {1}.</translation>
    </message>
    <message>
        <source>relative humidity</source>
        <translation>humedad relativa</translation>
    </message>
    <message>
        <source>A relative humidity of {0} % can&apos;t be: it is above 0 and at most 100 %.</source>
        <translation>Una humedad relativa del {0} % no puede ser: es mayor que 0 y como mucho del 100 %.</translation>
    </message>
    <message>
        <source>station pressure</source>
        <translation>presión atmosférica del lugar</translation>
    </message>
    <message>
        <source>A station pressure of {0} is outside {1} to {2}: no air outdoors has that.</source>
        <translation>Una presión atmosférica del lugar de {0} está fuera de {1} a {2}: el aire exterior nunca la tiene.</translation>
    </message>
    <message>
        <source>Exactly two of dry bulb, relative humidity, wet bulb and dew point are needed to know the air; {0} are given.</source>
        <translation>Para conocer el aire hacen falta exactamente dos de estos valores: bulbo seco, humedad relativa, bulbo húmedo y punto de rocío; hay {0}.</translation>
    </message>
    <message>
        <source>dry bulb</source>
        <translation>bulbo seco</translation>
    </message>
    <message>
        <source>wet bulb</source>
        <translation>bulbo húmedo</translation>
    </message>
    <message>
        <source>dew point</source>
        <translation>punto de rocío</translation>
    </message>
    <message>
        <source>Air this hot makes water boil at a station pressure of {0}; it can&apos;t be worked out.</source>
        <translation>Con un aire tan caliente el agua hierve a una presión atmosférica de {0}; no se puede calcular.</translation>
    </message>
    <message>
        <source>The altitude is not a number.</source>
        <translation>La altitud no es un número.</translation>
    </message>
    <message>
        <source>An altitude of {0} m is outside {1} to {2} m. Give the height above the sea.</source>
        <translation>Una altitud de {0} m está fuera de {1} a {2} m. Indique la altura sobre el nivel del mar.</translation>
    </message>
    <message>
        <source>A surface and a dew point above absolute zero are needed to tell whether it sweats.</source>
        <translation>Para saber si suda hacen falta la temperatura de la superficie y el punto de rocío, por encima del cero absoluto.</translation>
    </message>
    <message>
        <source>The temperature is not a number.</source>
        <translation>La temperatura no es un número.</translation>
    </message>
    <message>
        <source>{0} is outside the range in which the pressure of water vapour is known, {1} to {2}.</source>
        <translation>{0} está fuera del intervalo en que se conoce la presión del vapor de agua, de {1} a {2}.</translation>
    </message>
    <message>
        <source>The pressure of the vapour is not a number.</source>
        <translation>La presión del vapor no es un número.</translation>
    </message>
    <message>
        <source>Air this dry has its dew point below {0}, where it is not known any more.</source>
        <translation>Un aire tan seco tiene su punto de rocío por debajo de {0}, donde ya no se conoce.</translation>
    </message>
    <message>
        <source>Vapour of this pressure has its dew point above {0}, where it is not known any more.</source>
        <translation>Un vapor a esta presión tiene su punto de rocío por encima de {0}, donde ya no se conoce.</translation>
    </message>
    <message>
        <source>{0}: a list of numbers in square brackets is needed here.</source>
        <translation>{0}: aquí hace falta una lista de números entre corchetes.</translation>
    </message>
    <message>
        <source>comfort cooling</source>
        <translation>climatización</translation>
    </message>
    <message>
        <source>commercial refrigeration</source>
        <translation>refrigeración comercial</translation>
    </message>
    <message>
        <source>industrial process refrigeration</source>
        <translation>refrigeración de procesos industriales</translation>
    </message>
    <message>
        <source>regulatory</source>
        <translation>reglamentario</translation>
    </message>
    <message>
        <source>advisory</source>
        <translation>orientativo</translation>
    </message>
    <message>
        <source>{0}: must lie between {1} and {2}.</source>
        <translation>{0}: debe estar entre {1} y {2}.</translation>
    </message>
    <message>
        <source>{0}: must be above 0.</source>
        <translation>{0}: debe ser mayor que 0.</translation>
    </message>
    <message>
        <source>{0}: &quot;{1}&quot; is not a date. Write it like 2026-01-01.</source>
        <translation>{0}: «{1}» no es una fecha. Escríbala como 2026-01-01.</translation>
    </message>
    <message>
        <source>{0}: &quot;{1}&quot; is not a unit of measure.</source>
        <translation>{0}: «{1}» no es una unidad de medida.</translation>
    </message>
    <message>
        <source>{0}: &quot;{1}&quot; must be the entry&apos;s code but for capitals.</source>
        <translation>{0}: «{1}» tiene que ser el código de la entrada, salvo por las mayúsculas.</translation>
    </message>
    <message>
        <source>{0}: this can&apos;t be below 0.</source>
        <translation>{0}: no puede ser menor que 0.</translation>
    </message>
    <message>
        <source>{0}: as many exponents as coefficients are needed, at least one.</source>
        <translation>{0}: hacen falta tantos exponentes como coeficientes, al menos uno.</translation>
    </message>
    <message>
        <source>{0}: the range must go up from lowest_K to highest_K and stay below the critical temperature and every reducing_K.</source>
        <translation>{0}: el intervalo debe subir de lowest_K a highest_K y quedar por debajo de la temperatura crítica y de cada reducing_K.</translation>
    </message>
    <message>
        <source>{0}: the curves must rise all over their range, the dew curve never above the bubble curve. Compare the numbers with their source.</source>
        <translation>{0}: las curvas deben subir en todo su intervalo, y la de rocío nunca pasar por encima de la de burbuja. Compare los números con su fuente.</translation>
    </message>
    <message>
        <source>does not carry a flame</source>
        <translation>no propaga la llama</translation>
    </message>
    <message>
        <source>mildly flammable</source>
        <translation>ligeramente inflamable</translation>
    </message>
    <message>
        <source>flammable</source>
        <translation>inflamable</translation>
    </message>
    <message>
        <source>highly flammable</source>
        <translation>muy inflamable</translation>
    </message>
    <message>
        <source>poisonous, does not carry a flame</source>
        <translation>tóxico, no propaga la llama</translation>
    </message>
    <message>
        <source>poisonous, mildly flammable</source>
        <translation>tóxico, ligeramente inflamable</translation>
    </message>
    <message>
        <source>poisonous, flammable</source>
        <translation>tóxico, inflamable</translation>
    </message>
    <message>
        <source>poisonous, highly flammable</source>
        <translation>tóxico, muy inflamable</translation>
    </message>
    <message>
        <source>C1</source>
        <translation>C1</translation>
    </message>
    <message>
        <source>C2</source>
        <translation>C2</translation>
    </message>
    <message>
        <source>C3</source>
        <translation>C3</translation>
    </message>
    <message>
        <source>C4</source>
        <translation>C4</translation>
    </message>
    <message>
        <source>C5</source>
        <translation>C5</translation>
    </message>
    <message>
        <source>CX</source>
        <translation>CX</translation>
    </message>
    <message>
        <source>above CX</source>
        <translation>por encima de CX</translation>
    </message>
    <message>
        <source>A mean temperature of the year lies between {0} and {1}. Check the temperature.</source>
        <translation>Una temperatura media del año está entre {0} y {1}. Revise la temperatura.</translation>
    </message>
    <message>
        <source>Relative humidity lies between 0 and 100 %. Check the humidity.</source>
        <translation>La humedad relativa está entre 0 y 100 %. Revise la humedad.</translation>
    </message>
    <message>
        <source>A deposition of sulphur dioxide or chloride can&apos;t be less than nothing. Type it in mg/(m²·d), 0 or more.</source>
        <translation>Un depósito de dióxido de azufre o de cloruro no puede ser menor que nada. Escríbalo en mg/(m²·d), 0 o más.</translation>
    </message>
    <message>
        <source>sulphur dioxide</source>
        <translation>dióxido de azufre</translation>
    </message>
    <message>
        <source>chloride</source>
        <translation>cloruro</translation>
    </message>
    <message>
        <source>Losses are worked out for 0 to {0} years. Check the years.</source>
        <translation>Las pérdidas se calculan para 0 a {0} años. Revise los años.</translation>
    </message>
    <message>
        <source>A loss of metal is a number of 0 or more. Check the rate and the loss.</source>
        <translation>Una pérdida de metal es un número de 0 o más. Revise la velocidad y la pérdida.</translation>
    </message>
    <message>
        <source>steel</source>
        <translation>acero</translation>
    </message>
    <message>
        <source>zinc</source>
        <translation>cinc</translation>
    </message>
    <message>
        <source>copper</source>
        <translation>cobre</translation>
    </message>
    <message>
        <source>aluminium</source>
        <translation>aluminio</translation>
    </message>
    <message>
        <source>Pressure, stress, joint efficiency and sizes must be above 0, the efficiency not above 1. Check the values.</source>
        <translation>La presión, la tensión, la eficiencia de la junta y las medidas deben ser mayores que 0, y la eficiencia no mayor que 1. Revise los valores.</translation>
    </message>
    <message>
        <source>UG-16 asks for at least {0} after forming, whatever the pressure.</source>
        <translation>UG-16 pide al menos {0} después de conformar, sea cual sea la presión.</translation>
    </message>
    <message>
        <source>Vessels of at most {0} inside lie outside the scope of ASME VIII-1: take this as an engineering check, and the maker&apos;s least wall where it is known.</source>
        <translation>Los recipientes de hasta {0} por dentro quedan fuera del alcance de ASME VIII-1: tómelo como comprobación de ingeniería, y use la pared mínima del fabricante donde se conozca.</translation>
    </message>
    <message>
        <source>The head is so thin for its size that it can buckle at the knuckle: UG-32 asks for a further check (Appendix 1-4).</source>
        <translation>El fondo es tan delgado para su tamaño que puede pandear en el codo: UG-32 pide otra comprobación (apéndice 1-4).</translation>
    </message>
    <message>
        <source>No allowance for rust to come is added. Never grind or weld a charged vessel; local codes and a licensed technician decide.</source>
        <translation>No se añade margen para el óxido que vendrá. Nunca amole ni suelde un recipiente con carga; deciden las normas locales y un técnico autorizado.</translation>
    </message>
    <message>
        <source>The wall is more than half the inside radius: the thin-wall formulas of UG-27 do not hold. Check wall and diameter.</source>
        <translation>La pared es más de la mitad del radio interior: las fórmulas de pared delgada de UG-27 no valen. Revise la pared y el diámetro.</translation>
    </message>
    <message>
        <source>The pressure is more than 0.385 times stress and joint efficiency: the thin-wall formulas of UG-27 do not hold. Check the values and their units.</source>
        <translation>La presión es más de 0,385 veces la tensión por la eficiencia de la junta: las fórmulas de pared delgada de UG-27 no valen. Revise los valores y sus unidades.</translation>
    </message>
    <message>
        <source>A rusted area is a number from 0 to 100, in per cent. Check the number.</source>
        <translation>Una superficie oxidada es un número de 0 a 100, en tanto por ciento. Revise el número.</translation>
    </message>
    <message>
        <source>There is no wall reading. Add at least one.</source>
        <translation>No hay ninguna medida de pared. Añada al menos una.</translation>
    </message>
    <message>
        <source>The wall required and the error of the gauge can&apos;t be less than nothing.</source>
        <translation>La pared necesaria y el error del medidor no pueden ser menores que nada.</translation>
    </message>
    <message>
        <source>A wall reading must be thicker than nothing. Check the readings.</source>
        <translation>Una medida de pared debe ser mayor que nada. Revise las medidas.</translation>
    </message>
    <message>
        <source>Two wall readings are of the same day, or not in order. Keep one for each day, the earliest first.</source>
        <translation>Dos medidas de pared son del mismo día o no están en orden. Deje una por día, la más antigua primero.</translation>
    </message>
    <message>
        <source>The wall readings lie more than a thousand years apart. Check their dates.</source>
        <translation>Entre las medidas de pared hay más de mil años. Revise sus fechas.</translation>
    </message>
    <message>
        <source>The wall, {0}, is not more than the {1} that must be left: a replacement, not a paint, decision. Have it judged by a licensed technician before it runs on.</source>
        <translation>La pared, {0}, no supera los {1} que deben quedar: toca sustituir, no pintar. Que la juzgue un técnico autorizado antes de que siga en marcha.</translation>
    </message>
    <message>
        <source>One reading says how thick the wall is, not how fast it goes. Measure the same spot again.</source>
        <translation>Una sola medida dice cuánto mide la pared, no a qué ritmo se pierde. Vuelva a medir el mismo punto.</translation>
    </message>
    <message>
        <source>The wall reaches the {0} that must be left in about {1} years, at {2} mm a year.</source>
        <translation>La pared llega a los {0} que deben quedar en unos {1} años, a {2} mm al año.</translation>
    </message>
    <message>
        <source>The wall reads thicker than before, which no wall does: paint under the probe, another spot, or another gauge. No loss can be read from this. Measure the bare spot again.</source>
        <translation>La pared mide más que antes, y ninguna pared crece: pintura bajo la sonda, otro punto u otro medidor. De esto no se lee pérdida alguna. Vuelva a medir el punto desnudo.</translation>
    </message>
    <message>
        <source>No measurable loss: the readings lie closer together than the gauge can tell apart. That is not forever; measure again.</source>
        <translation>Sin pérdida medible: las medidas están más cerca de lo que el medidor distingue. No es para siempre; vuelva a medir.</translation>
    </message>
    <message>
        <source>There is no weather to take means of.</source>
        <translation>No hay datos meteorológicos de los que sacar medias.</translation>
    </message>
    <message>
        <source>Charge added again: {0} on {1}, after {2} on {3}; it leaks. How fast can&apos;t be told without the nameplate&apos;s factory charge.</source>
        <translation>Carga añadida otra vez: {0} el {1}, tras {2} el {3}; hay una fuga. Sin la carga de fábrica de la placa no se puede decir a qué ritmo.</translation>
    </message>
    <message>
        <source>Charge added again: {0} on {1}, after {2} on {3}; it leaks, {4} of the full charge a year.</source>
        <translation>Carga añadida otra vez: {0} el {1}, tras {2} el {3}; hay una fuga, {4} de la carga completa al año.</translation>
    </message>
    <message>
        <source>Much charge added in one season: {0} up to {1}, {2} of the full charge; it leaks.</source>
        <translation>Mucha carga añadida en una temporada: {0} hasta el {1}, {2} de la carga completa; hay una fuga.</translation>
    </message>
    <message>
        <source>The leak found and the repair or new part entered as work on the part that leaked; or {0} months without another addition.</source>
        <translation>La fuga hallada y la reparación o pieza nueva anotada como trabajo en la pieza que fugaba; o {0} meses sin otra adición.</translation>
    </message>
    <message>
        <source>leak</source>
        <translation>fuga</translation>
    </message>
    <message>
        <source>first charge</source>
        <translation>primera carga</translation>
    </message>
    <message>
        <source>Out of it {0}, into it {1}, at units: {2}, {3} to {4}. Different refrigerants were recovered into it: what is in it can&apos;t be used again.</source>
        <translation>De ella salieron {0}, en ella entraron {1}, en unidades: {2}, del {3} al {4}. Se recuperaron en ella refrigerantes distintos: lo que contiene no se puede volver a usar.</translation>
    </message>
    <message>
        <source>Out of it {0}, into it {1}, at units: {2}, {3} to {4}.</source>
        <translation>De ella salieron {0}, en ella entraron {1}, en unidades: {2}, del {3} al {4}.</translation>
    </message>
    <message>
        <source>No refrigerant put in or taken out is on record.</source>
        <translation>No consta que se haya añadido ni sacado refrigerante.</translation>
    </message>
    <message>
        <source>The nameplate&apos;s factory charge is not written down: what should be in the unit and its leak rate can&apos;t be told. Enter the charge with the nameplate.</source>
        <translation>La carga de fábrica de la placa no está anotada: no se puede decir cuánto debería haber en la unidad ni su tasa de fuga. Anote la carga con la placa.</translation>
    </message>
    <message>
        <source>{0} more came out than the factory charge of {1} and all that went in: a mass or the nameplate is wrong, or the unit was overcharged.</source>
        <translation>Salieron {0} más que la carga de fábrica de {1} y todo lo añadido: una masa o la placa está mal, o la unidad tenía exceso de carga.</translation>
    </message>
    <message>
        <source>{0} more went in than came out ({2} of the factory charge of {1}): so much has leaked away, unless the unit was low before or is overcharged.</source>
        <translation>Entraron {0} más de lo que salió ({2} de la carga de fábrica de {1}): eso se ha fugado, salvo que antes le faltara o ahora le sobre carga.</translation>
    </message>
    <message>
        <source>{0} more came out or was lost than went in: of the factory charge of {1} no more than {2} should be left.</source>
        <translation>Salieron o se perdieron {0} más de lo que entró: de la carga de fábrica de {1} no deberían quedar más de {2}.</translation>
    </message>
    <message>
        <source>What went in and what came out balance: the factory charge of {0} should be in the unit.</source>
        <translation>Lo que entró y lo que salió se compensan: en la unidad debería estar la carga de fábrica de {0}.</translation>
    </message>
    <message>
        <source>Leak rate when {0} was added on {1}: {2} of the full charge a year by annualizing, {3} by the rolling average; {4} in the 365 days up to today.</source>
        <translation>Tasa de fuga al añadir {0} el {1}: {2} de la carga completa al año por anualización, {3} por media móvil; {4} en los 365 días hasta hoy.</translation>
    </message>
    <message>
        <source>Leak rate when {0} was added on {1}: at least {2} of the full charge a year by annualizing (when it was last full is not known), {3} by the rolling average; {4} in the 365 days up to today.</source>
        <translation>Tasa de fuga al añadir {0} el {1}: al menos {2} de la carga completa al año por anualización (no se sabe cuándo estuvo llena por última vez), {3} por media móvil; {4} en los 365 días hasta hoy.</translation>
    </message>
    <message>
        <source>Limit: {0} a year, regulatory ({1}).</source>
        <translation>Límite: {0} al año, reglamentario ({1}).</translation>
    </message>
    <message>
        <source>Limit: {0} a year, advisory ({1}).</source>
        <translation>Límite: {0} al año, orientativo ({1}).</translation>
    </message>
    <message>
        <source>Over the limit: the rule asks for a repair within {0} days ({1} where a plant must be shut down), records kept {2} years, and a report by 1 March where {3} of the full charge or more was lost in a calendar year. Read the rule itself.</source>
        <translation>Por encima del límite: la norma pide reparar en {0} días ({1} si hay que parar una planta), guardar los registros {2} años e informar antes del 1 de marzo si en un año natural se perdió {3} de la carga completa o más. Lea la norma misma.</translation>
    </message>
    <message>
        <source>Reckoned as in 40 CFR 82.152. Recovered refrigerant is not a leak, nor is putting it back or a first charge; what goes in beyond that is.</source>
        <translation>Calculado según 40 CFR 82.152. El refrigerante recuperado no es fuga, ni devolverlo ni una primera carga; lo que entra de más sí lo es.</translation>
    </message>
    <message>
        <source>{0} was put in on {1}, but the nameplate says {2}: refrigerants are never mixed. Find out what is in the unit before any more goes in.</source>
        <translation>Se añadió {0} el {1}, pero la placa dice {2}: los refrigerantes no se mezclan nunca. Averigüe qué hay en la unidad antes de añadir más.</translation>
    </message>
    <message>
        <source>The temperature of the refrigerant is not a number.</source>
        <translation>La temperatura del refrigerante no es un número.</translation>
    </message>
    <message>
        <source>{0} is outside the range in which the pressure of {1} is known, {2} to {3}.</source>
        <translation>{0} está fuera del intervalo en que se conoce la presión de {1}, de {2} a {3}.</translation>
    </message>
    <message>
        <source>The pressure of the refrigerant is not a number.</source>
        <translation>La presión del refrigerante no es un número.</translation>
    </message>
    <message>
        <source>An absolute pressure of {0} can&apos;t be: even a vacuum has 0. Is it a gauge pressure?</source>
        <translation>Una presión absoluta de {0} no puede ser: hasta el vacío tiene 0. ¿Es una presión manométrica?</translation>
    </message>
    <message>
        <source>{0} is outside the range in which the temperature of {1} is known, {2} to {3} ({4} to {5}).</source>
        <translation>{0} está fuera del intervalo en que se conoce la temperatura de {1}, de {2} a {3} ({4} a {5}).</translation>
    </message>
    <message>
        <source>The line&apos;s temperature must be above absolute zero.</source>
        <translation>La temperatura de la línea tiene que estar por encima del cero absoluto.</translation>
    </message>
    <message>
        <source>The gauge pressure is not a number.</source>
        <translation>La presión manométrica no es un número.</translation>
    </message>
    <message>
        <source>A gauge pressure of {0} at a station pressure of {1} is less than a vacuum.</source>
        <translation>Una presión manométrica de {0} con una presión atmosférica del lugar de {1} es menos que el vacío.</translation>
    </message>
    <message>
        <source>{0} is outside {1} to {2}; no target superheat can be told from it.</source>
        <translation>{0} está fuera de {1} a {2}; con ella no se puede dar un recalentamiento objetivo.</translation>
    </message>
    <message>
        <source>must be left by ASME VIII-1 for {0} at {1} ({2}) and an outside diameter of {3}</source>
        <translation>debe quedar según ASME VIII-1 para {0} a {1} ({2}) y un diámetro exterior de {3}</translation>
    </message>
    <message>
        <source>must be left by the nameplate or the maker&apos;s data</source>
        <translation>debe quedar según la placa o los datos del fabricante</translation>
    </message>
    <message>
        <source>{0} of the first reading; note the vessel&apos;s diameter or the maker&apos;s smallest wall for a better figure</source>
        <translation>{0} de la primera lectura; anote el diámetro del recipiente o la pared mínima del fabricante para un valor mejor</translation>
    </message>
    <message>
        <source>Rusted</source>
        <translation>Oxidado</translation>
    </message>
    <message>
        <source>Rusted {0}: Ri {1} by ISO 4628-3, grade {2} by ASTM D610.</source>
        <translation>Oxidado {0}: Ri {1} según ISO 4628-3, grado {2} según ASTM D610.</translation>
    </message>
    <message>
        <source>Rusted {0}: Ri {1} by ISO 4628-3, grade {2} by ASTM D610; {3} more a year.</source>
        <translation>Oxidado {0}: Ri {1} según ISO 4628-3, grado {2} según ASTM D610; {3} más al año.</translation>
    </message>
    <message>
        <source>Capacitor, compressor section,</source>
        <translation>Capacitor, sección del compresor,</translation>
    </message>
    <message>
        <source>Capacitor, fan section,</source>
        <translation>Capacitor, sección del ventilador,</translation>
    </message>
    <message>
        <source>it has lost capacity; replace it before it strands the motor.</source>
        <translation>ha perdido capacidad; cámbielo antes de que deje parado el motor.</translation>
    </message>
    <message>
        <source>more than it is made for: the meter, or another capacitor than the label says.</source>
        <translation>más de lo que debe: el medidor, u otro capacitor que el de la etiqueta.</translation>
    </message>
    <message>
        <source>{0} {1}; note the value on its label to know what to ask for.</source>
        <translation>{0} {1}; anote el valor de su etiqueta para saber qué pedir.</translation>
    </message>
    <message>
        <source>The charge is judged while the unit runs cooling; noted is another state.</source>
        <translation>La carga se juzga con la unidad enfriando; lo anotado es otro estado.</translation>
    </message>
    <message>
        <source>At {0} outdoors superheat and subcooling don&apos;t tell the charge (from {1} on); weigh it instead.</source>
        <translation>Con {0} fuera, el recalentamiento y el subenfriamiento no dicen la carga (sí desde {1}); pésela.</translation>
    </message>
    <message>
        <source>Pressures mean little without the refrigerant: note it with the unit.</source>
        <translation>Las presiones dicen poco sin el refrigerante: anótelo con la unidad.</translation>
    </message>
    <message>
        <source>No curve of {0} is known, so pressures can&apos;t be turned into temperatures.</source>
        <translation>No se conoce ninguna curva de {0}, así que las presiones no se pueden pasar a temperaturas.</translation>
    </message>
    <message>
        <source>The site&apos;s altitude makes no sense, so gauge pressures can&apos;t be used.</source>
        <translation>La altitud del sitio no tiene sentido, así que las presiones manométricas no sirven.</translation>
    </message>
    <message>
        <source>Compressor shell warmer than the outdoor air by</source>
        <translation>Carcasa del compresor más caliente que el aire exterior en</translation>
    </message>
    <message>
        <source>the heater does not keep refrigerant out of the oil; is it on, and since 12 hours?</source>
        <translation>la resistencia no mantiene el refrigerante fuera del aceite; ¿está conectada, y desde hace 12 horas?</translation>
    </message>
    <message>
        <source>The crankcase heater is judged with the unit off; noted is that it runs.</source>
        <translation>La resistencia de cárter se juzga con la unidad parada; lo anotado es que funciona.</translation>
    </message>
    <message>
        <source>Insulation resistance</source>
        <translation>Resistencia de aislamiento</translation>
    </message>
    <message>
        <source>moisture or wear in the winding; liquid in a cold sump reads low too, so test again warm before anything is condemned.</source>
        <translation>humedad o desgaste del bobinado; el líquido en un cárter frío también da poco: repita en caliente antes de condenar nada.</translation>
    </message>
    <message>
        <source>Insulation resistance {0}, less than half of the {1} of last time.</source>
        <translation>Resistencia de aislamiento {0}, menos de la mitad de los {1} de la última vez.</translation>
    </message>
    <message>
        <source>Insulation resistance, 60 s over 30 s,</source>
        <translation>Resistencia de aislamiento, 60 s entre 30 s,</translation>
    </message>
    <message>
        <source>the winding may be damp or dirty.</source>
        <translation>el bobinado puede estar húmedo o sucio.</translation>
    </message>
    <message>
        <source>Compressor current</source>
        <translation>Corriente del compresor</translation>
    </message>
    <message>
        <source>it works little; low charge, a light load, or it does not pump.</source>
        <translation>trabaja poco; poca carga, poca demanda, o no bombea.</translation>
    </message>
    <message>
        <source>it works hard; head pressure, voltage, or wear.</source>
        <translation>trabaja forzado; presión de descarga, tensión o desgaste.</translation>
    </message>
    <message>
        <source>Fan motor current</source>
        <translation>Corriente del motor del ventilador</translation>
    </message>
    <message>
        <source>the fan moves little air, or the blade slips.</source>
        <translation>el ventilador mueve poco aire, o la hélice patina.</translation>
    </message>
    <message>
        <source>bearings, capacitor, or the wrong blade.</source>
        <translation>cojinetes, capacitor o una hélice que no es la suya.</translation>
    </message>
    <message>
        <source>{0} {1}; note the nameplate&apos;s current to know what to ask for.</source>
        <translation>{0} {1}; anote la corriente de la placa para saber qué pedir.</translation>
    </message>
    <message>
        <source>Discharge line</source>
        <translation>Línea de descarga</translation>
    </message>
    <message>
        <source>oil breaks down; low charge, high head, or little cooling gas.</source>
        <translation>el aceite se degrada; poca carga, presión alta o poco gas que enfríe.</translation>
    </message>
    <message>
        <source>Temperature drop across the drier</source>
        <translation>Caída de temperatura en el secador</translation>
    </message>
    <message>
        <source>it is plugging up.</source>
        <translation>se está taponando.</translation>
    </message>
    <message>
        <source>Voltage drop across the contactor</source>
        <translation>Caída de tensión en el contactor</translation>
    </message>
    <message>
        <source>pitted points or a loose connection.</source>
        <translation>contactos picados o una conexión floja.</translation>
    </message>
    <message>
        <source>Ground continuity</source>
        <translation>Continuidad de la tierra</translation>
    </message>
    <message>
        <source>the bond is loose, painted or rusted.</source>
        <translation>la conexión está floja, pintada u oxidada.</translation>
    </message>
    <message>
        <source>Rise across the reversing valve</source>
        <translation>Aumento en la válvula inversora</translation>
    </message>
    <message>
        <source>hot gas leaks through the valve.</source>
        <translation>pasa gas caliente por la válvula.</translation>
    </message>
    <message>
        <source>External static pressure</source>
        <translation>Presión estática externa</translation>
    </message>
    <message>
        <source>the ducts, coil or filter choke the air.</source>
        <translation>los conductos, el serpentín o el filtro ahogan el aire.</translation>
    </message>
    <message>
        <source>nameplate or the maker&apos;s data</source>
        <translation>placa o datos del fabricante</translation>
    </message>
    <message>
        <source>{0} {1}; asked for {2} to {3}.</source>
        <translation>{0} {1}; se pide de {2} a {3}.</translation>
    </message>
    <message>
        <source>{0} {1}; asked for {2} or more.</source>
        <translation>{0} {1}; se pide {2} o más.</translation>
    </message>
    <message>
        <source>{0} {1}; asked for {2} or less.</source>
        <translation>{0} {1}; se pide {2} o menos.</translation>
    </message>
    <message>
        <source>{0} {1}.</source>
        <translation>{0} {1}.</translation>
    </message>
    <message>
        <source>{0} {1}, below {2}: {3}</source>
        <translation>{0} {1}, por debajo de {2}: {3}</translation>
    </message>
    <message>
        <source>{0} {1}, above {2}: {3}</source>
        <translation>{0} {1}, por encima de {2}: {3}</translation>
    </message>
    <message>
        <source>A wet bulb of {0} in air of {1}: a wet bulb is never above the air. Swapped, or the wick is dry?</source>
        <translation>Un bulbo húmedo de {0} en aire a {1}: el bulbo húmedo nunca supera al aire. ¿Cambiados, o la mecha está seca?</translation>
    </message>
    <message>
        <source>The supply air is warmer than the return air while the unit is noted as cooling.</source>
        <translation>El aire de impulsión está más caliente que el de retorno, y lo anotado es que la unidad enfría.</translation>
    </message>
    <message>
        <source>The supply air is colder than the return air while the unit is noted as heating.</source>
        <translation>El aire de impulsión está más frío que el de retorno, y lo anotado es que la unidad calienta.</translation>
    </message>
    <message>
        <source>A suction line of {0} is warmer than any air around it, which can&apos;t be while the unit cools. Is it the right pipe?</source>
        <translation>Una línea de succión a {0} está más caliente que todo el aire de alrededor, lo que no puede ser si la unidad enfría. ¿Es el tubo correcto?</translation>
    </message>
    <message>
        <source>A liquid line of {0} is colder than the outdoor air, which can&apos;t be while the unit cools. Is it the right pipe, and is the drier cold?</source>
        <translation>Una línea de líquido a {0} está más fría que el aire exterior, lo que no puede ser si la unidad enfría. ¿Es el tubo correcto, y está frío el secador?</translation>
    </message>
    <message>
        <source>The suction pressure is not below the liquid pressure: hoses swapped, or the unit is off.</source>
        <translation>La presión de succión no está por debajo de la de líquido: mangueras cambiadas, o la unidad está parada.</translation>
    </message>
    <message>
        <source>At this liquid pressure {0} condenses at {1}, not above the outdoor air: pressure in another unit of measure, another refrigerant, or the unit is off.</source>
        <translation>A esta presión de líquido {0} condensa a {1}, no por encima del aire exterior: presión en otra unidad de medida, otro refrigerante, o la unidad está parada.</translation>
    </message>
    <message>
        <source>At this suction pressure {0} boils at {1}, not below the return air: pressure in another unit of measure, another refrigerant, or the unit is off.</source>
        <translation>A esta presión de succión {0} hierve a {1}, no por debajo del aire de retorno: presión en otra unidad de medida, otro refrigerante, o la unidad está parada.</translation>
    </message>
    <message>
        <source>Condensing above the outdoor air by</source>
        <translation>Condensa por encima del aire exterior en</translation>
    </message>
    <message>
        <source>little heat is given off; too little charge, or the compressor does not pump.</source>
        <translation>se cede poco calor; falta carga, o el compresor no bombea.</translation>
    </message>
    <message>
        <source>heat is given off with difficulty; coil, fan, charge.</source>
        <translation>el calor se cede con dificultad; serpentín, ventilador, carga.</translation>
    </message>
    <message>
        <source>Boiling below the return air by</source>
        <translation>Hierve por debajo del aire de retorno en</translation>
    </message>
    <message>
        <source>the suction pressure is high for this air.</source>
        <translation>la presión de succión es alta para este aire.</translation>
    </message>
    <message>
        <source>the suction pressure is low for this air.</source>
        <translation>la presión de succión es baja para este aire.</translation>
    </message>
    <message>
        <source>Subcooling</source>
        <translation>Subenfriamiento</translation>
    </message>
    <message>
        <source>less liquid stands in the condenser than asked for.</source>
        <translation>en el condensador hay menos líquido del que se pide.</translation>
    </message>
    <message>
        <source>more liquid stands in the condenser than asked for.</source>
        <translation>en el condensador hay más líquido del que se pide.</translation>
    </message>
    <message>
        <source>The liquid line is {0} warmer than the refrigerant condenses at this pressure: vapour in the line, or a reading is off.</source>
        <translation>La línea de líquido está {0} más caliente de lo que el refrigerante condensa a esta presión: vapor en la línea, o falla una lectura.</translation>
    </message>
    <message>
        <source>Subcooling {0}; with a fixed orifice the charge is judged by superheat.</source>
        <translation>Subenfriamiento {0}; con orificio fijo la carga se juzga por el recalentamiento.</translation>
    </message>
    <message>
        <source>Superheat</source>
        <translation>Recalentamiento</translation>
    </message>
    <message>
        <source>more liquid reaches the coil&apos;s end than it boils; liquid may get to the compressor.</source>
        <translation>al final del serpentín llega más líquido del que hierve; puede llegar líquido al compresor.</translation>
    </message>
    <message>
        <source>the coil gets less refrigerant than it could boil.</source>
        <translation>el serpentín recibe menos refrigerante del que podría hervir.</translation>
    </message>
    <message>
        <source>Superheat {0}; note how the refrigerant is metered to know what to ask for.</source>
        <translation>Recalentamiento {0}; anote cómo se dosifica el refrigerante para saber qué pedir.</translation>
    </message>
    <message>
        <source>Superheat {0}; a fixed orifice needs the return air wet bulb and the outdoor temperature to know what to ask for.</source>
        <translation>Recalentamiento {0}; con orificio fijo hacen falta el bulbo húmedo del retorno y la temperatura exterior para saber qué pedir.</translation>
    </message>
    <message>
        <source>Superheat {0}; for this wet bulb and outdoor temperature the chart gives no target: the charge can&apos;t be judged by superheat now.</source>
        <translation>Recalentamiento {0}; para este bulbo húmedo y esta temperatura exterior la tabla no da objetivo: ahora la carga no se puede juzgar por el recalentamiento.</translation>
    </message>
    <message>
        <source>The suction line is {0} colder than the refrigerant boils at this pressure: liquid at the port, or a reading is off. If the pressure was absolute, the gauge pressure is {1}.</source>
        <translation>La línea de succión está {0} más fría de lo que el refrigerante hierve a esta presión: líquido en la toma, o falla una lectura. Si la presión era absoluta, la manométrica es {1}.</translation>
    </message>
    <message>
        <source>The suction line is {0} colder than the refrigerant boils at this pressure: liquid at the port, or a reading is off.</source>
        <translation>La línea de succión está {0} más fría de lo que el refrigerante hierve a esta presión: líquido en la toma, o falla una lectura.</translation>
    </message>
    <message>
        <source>Supply air colder than the return air by</source>
        <translation>Aire de impulsión más frío que el de retorno en</translation>
    </message>
    <message>
        <source>the unit cools less than it should; measure again before judging it.</source>
        <translation>la unidad enfría menos de lo que debe; mida otra vez antes de juzgar.</translation>
    </message>
    <message>
        <source>little air moves over the indoor coil.</source>
        <translation>pasa poco aire por el serpentín interior.</translation>
    </message>
    <message>
        <source>target temperature split, California Title 24 Residential Appendix RA3.2, extract, from memory</source>
        <translation>salto de temperatura objetivo, California, Título 24, apéndice residencial RA3.2, extracto, de memoria</translation>
    </message>
    <message>
        <source>Line voltage</source>
        <translation>Tensión de red</translation>
    </message>
    <message>
        <source>motors draw more current and run hot.</source>
        <translation>los motores consumen más y se calientan.</translation>
    </message>
    <message>
        <source>insulation and capacitors suffer.</source>
        <translation>sufren el aislamiento y los capacitores.</translation>
    </message>
    <message>
        <source>{0} {1}; note the nameplate&apos;s voltage to know what to ask for.</source>
        <translation>{0} {1}; anote la tensión de la placa para saber qué pedir.</translation>
    </message>
    <message>
        <source>Voltage imbalance</source>
        <translation>Desequilibrio de tensiones</translation>
    </message>
    <message>
        <source>low charge or a leak</source>
        <translation>poca carga o una fuga</translation>
    </message>
    <message>
        <source>Search for the leak first; then weigh what is in it. Subcooling and superheat together tell it from a restriction.</source>
        <translation>Busque primero la fuga; luego pese lo que hay. El subenfriamiento y el recalentamiento juntos la distinguen de una obstrucción.</translation>
    </message>
    <message>
        <source>a restriction (drier, valve or screen)</source>
        <translation>una obstrucción (secador, válvula o malla)</translation>
    </message>
    <message>
        <source>The temperature drop across the drier, and where frost begins on the line.</source>
        <translation>La caída de temperatura en el secador, y dónde empieza la escarcha en la línea.</translation>
    </message>
    <message>
        <source>too much charge</source>
        <translation>demasiada carga</translation>
    </message>
    <message>
        <source>Recover and weigh it; before that, a clean coil and its fan are ruled out by looking.</source>
        <translation>Recupérela y pésela; antes, descarte mirando el serpentín y su ventilador.</translation>
    </message>
    <message>
        <source>too little air over the indoor coil</source>
        <translation>poco aire por el serpentín interior</translation>
    </message>
    <message>
        <source>External static pressure, filter and blower; supply and return air temperature.</source>
        <translation>Presión estática externa, filtro y soplante; temperatura del aire de impulsión y de retorno.</translation>
    </message>
    <message>
        <source>a compressor that pumps little, or a valve that lets gas by</source>
        <translation>un compresor que bombea poco, o una válvula que deja pasar gas</translation>
    </message>
    <message>
        <source>The compressor&apos;s current, and the temperatures on both sides of the reversing valve.</source>
        <translation>La corriente del compresor, y las temperaturas a ambos lados de la válvula inversora.</translation>
    </message>
    <message>
        <source>a dirty outdoor coil, a weak fan, or air in the circuit</source>
        <translation>un serpentín exterior sucio, un ventilador débil o aire en el circuito</translation>
    </message>
    <message>
        <source>Wash the coil and take the liquid pressure again; look at the fan&apos;s current.</source>
        <translation>Lave el serpentín y tome otra vez la presión de líquido; mire la corriente del ventilador.</translation>
    </message>
    <message>
        <source>The suction line</source>
        <translation>La línea de succión</translation>
    </message>
    <message>
        <source>The compressor shell</source>
        <translation>La carcasa del compresor</translation>
    </message>
    <message>
        <source>dew point: ASHRAE Handbook, Fundamentals, chapter 1</source>
        <translation>punto de rocío: ASHRAE Handbook, Fundamentals, capítulo 1</translation>
    </message>
    <message>
        <source>{0} is {1} above the dew point of {2}: bare metal stays dry.</source>
        <translation>{0} está {1} por encima del punto de rocío de {2}: el metal desnudo sigue seco.</translation>
    </message>
    <message>
        <source>{0} is {1} below the dew point of {2} and below freezing: it frosts.</source>
        <translation>{0} está {1} por debajo del punto de rocío de {2} y bajo cero: se escarcha.</translation>
    </message>
    <message>
        <source>{0} is {1} below the dew point of {2}: bare metal is wet.</source>
        <translation>{0} está {1} por debajo del punto de rocío de {2}: el metal desnudo está mojado.</translation>
    </message>
    <message>
        <source>As asked</source>
        <translation>Como se pide</translation>
    </message>
    <message>
        <source>Watch</source>
        <translation>Vigilar</translation>
    </message>
    <message>
        <source>Outside</source>
        <translation>Fuera de límite</translation>
    </message>
    <message>
        <source>Look again</source>
        <translation>Mírelo otra vez</translation>
    </message>
    <message>
        <source>No answer</source>
        <translation>Sin respuesta</translation>
    </message>
    <message>
        <source>{0} is not in the catalogue: superheat and subcooling can&apos;t be told with it.</source>
        <translation>{0} no está en el catálogo: con él no se pueden dar recalentamiento ni subenfriamiento.</translation>
    </message>
    <message>
        <source>{0}: safety class {1}, {2}; global warming potential {3} ({4}).</source>
        <translation>{0}: clase de seguridad {1}, {2}; potencial de calentamiento global {3} ({4}).</translation>
    </message>
    <message>
        <source>Rate of loss {0} a year, ± {1} (95 %).</source>
        <translation>Pérdida de {0} al año, ± {1} (95 %).</translation>
    </message>
    <message>
        <source>Rate of loss: over all years {0} a year ± {1}, lately {2} a year ± {3} (95 %).</source>
        <translation>Pérdida: en todos los años {0} al año ± {1}, últimamente {2} al año ± {3} (95 %).</translation>
    </message>
    <message>
        <source>“{0}” is no time from and to. Write the hours the unit runs like 22:00-6:00.</source>
        <translation>«{0}» no es un horario. Escriba las horas de marcha de la unidad como 22:00-6:00.</translation>
    </message>
    <message>
        <source>{0}, line {1}: “{2}” is no date. Write it like 2026-05-04.</source>
        <translation>{0}, línea {1}: «{2}» no es una fecha. Escríbala como 2026-05-04.</translation>
    </message>
    <message>
        <source>{0}, line {1}: a wall of “{2}” mm can&apos;t be. Check the reading and its unit.</source>
        <translation>{0}, línea {1}: no puede haber una pared de «{2}» mm. Revise la medida y su unidad.</translation>
    </message>
    <message>
        <source>{0}, line {1}: there is a reading of {2} already. Keep one a day.</source>
        <translation>{0}, línea {1}: ya hay una medida del {2}. Deje una por día.</translation>
    </message>
    <message>
        <source>{0}: the name of the column “{1}” has no unit. Write it with one, like {2}.</source>
        <translation>{0}: el nombre de la columna «{1}» no tiene unidad. Escríbalo con ella, como {2}.</translation>
    </message>
    <message>
        <source>{0} has no column of temperatures. Its first line must name one with its unit, like temperature_C.</source>
        <translation>{0} no tiene columna de temperaturas. Su primera línea debe nombrar una con su unidad, como temperature_C.</translation>
    </message>
    <message>
        <source>{0} has no column of humidities. Its first line must name one with its unit, like rh_percent or dew_point_C.</source>
        <translation>{0} no tiene columna de humedades. Su primera línea debe nombrar una con su unidad, como rh_percent o dew_point_C.</translation>
    </message>
    <message>
        <source>{0}: a quotation mark in the first line is out of place. That line must name the columns.</source>
        <translation>{0}: en la primera línea hay unas comillas fuera de lugar. Esa línea debe nombrar las columnas.</translation>
    </message>
    <message>
        <source>{0} has semicolons or tabs between its values. Save it with commas, and “.” as decimal sign.</source>
        <translation>{0} tiene punto y coma o tabuladores entre sus valores. Guárdelo con comas, y con «.» como signo decimal.</translation>
    </message>
    <message>
        <source>{0}, line {1}: “{2}” is no time. Write it like 2026-05-04 14:00. The row is skipped.</source>
        <translation>{0}, línea {1}: «{2}» no es una hora. Escríbala como 2026-05-04 14:00. Se omite la fila.</translation>
    </message>
    <message>
        <source>{0}, line {1}: a quotation mark is out of place. The row is skipped.</source>
        <translation>{0}, línea {1}: hay unas comillas fuera de lugar. Se omite la fila.</translation>
    </message>
    <message>
        <source>{0}, line {1}: values in this row: {2}, but columns: {3}. The row is skipped.</source>
        <translation>{0}, línea {1}: valores en esta fila: {2}, pero columnas: {3}. Se omite la fila.</translation>
    </message>
    <message>
        <source>{0} does not say how long a row stands for: an hour is taken.</source>
        <translation>{0} no dice cuánto dura cada fila: se toma una hora.</translation>
    </message>
    <message>
        <source>{0} does not say how many rows make an hour (“{1}”): one is taken.</source>
        <translation>{0} no dice cuántas filas hacen una hora («{1}»): se toma una.</translation>
    </message>
    <message>
        <source>{0}, line {1}: values in this row: {2}, but the humidity is the ninth. The row is skipped.</source>
        <translation>{0}, línea {1}: valores en esta fila: {2}, pero la humedad es el noveno. Se omite la fila.</translation>
    </message>
    <message>
        <source>{0}, line {1}: “{2}” is no relative humidity from 0 to 110 %. The row is skipped.</source>
        <translation>{0}, línea {1}: «{2}» no es una humedad relativa de 0 a 110 %. Se omite la fila.</translation>
    </message>
    <message>
        <source>{0}, line {1}: the humidity is missing. The row is skipped.</source>
        <translation>{0}, línea {1}: falta la humedad. Se omite la fila.</translation>
    </message>
    <message>
        <source>{0}, line {1}: “{2}” is no dew point of this air: it lies between -90 °C and the air&apos;s temperature. The row is skipped.</source>
        <translation>{0}, línea {1}: «{2}» no es un punto de rocío de este aire: está entre -90 °C y la temperatura del aire. Se omite la fila.</translation>
    </message>
    <message>
        <source>{0}, line {1}: the temperature is missing. The row is skipped.</source>
        <translation>{0}, línea {1}: falta la temperatura. Se omite la fila.</translation>
    </message>
    <message>
        <source>{0}, line {1}: “{2}” is no temperature of air (from -90 °C to 70 °C). The row is skipped.</source>
        <translation>{0}, línea {1}: «{2}» no es una temperatura del aire (de -90 °C a 70 °C). Se omite la fila.</translation>
    </message>
    <message>
        <source>{0} holds no row of weather. Check that it is the right file, and whole.</source>
        <translation>{0} no contiene ninguna fila de datos meteorológicos. Compruebe que es el archivo correcto y que está completo.</translation>
    </message>
    <message>
        <source>{0} holds no row of weather that can be used (rows: {1}). The first is line {2}: check that it is the right file.</source>
        <translation>{0} no contiene ninguna fila de datos meteorológicos que sirva (filas: {1}). La primera es la línea {2}: compruebe que es el archivo correcto.</translation>
    </message>
    <message>
        <source>Interest lies between 0 and 100 % a year. Check the rate.</source>
        <translation>El interés está entre 0 y 100 % al año. Revise la tasa.</translation>
    </message>
    <message>
        <source>Years must be above 0 and at most {0}. Check the years.</source>
        <translation>Los años deben ser más de 0 y como mucho {0}. Revise los años.</translation>
    </message>
    <message>
        <source>A yearly growth of cost lies between -50 and 100 %. Check the growth.</source>
        <translation>Un crecimiento anual del costo está entre -50 y 100 %. Revise el crecimiento.</translation>
    </message>
    <message>
        <source>A payment is no number. Check the payments.</source>
        <translation>Un pago no es un número. Revise los pagos.</translation>
    </message>
    <message>
        <source>Each year needs a running cost and a value at its end, for one year at least.</source>
        <translation>Cada año necesita un costo de uso y un valor al final, al menos para un año.</translation>
    </message>
    <message>
        <source>Capacity, hours and seasonal efficiency must be above 0. Check the three.</source>
        <translation>La capacidad, las horas y la eficiencia estacional deben ser mayores que 0. Revise las tres.</translation>
    </message>
    <message>
        <source>A yearly loss of efficiency lies between 0 and 50 %, over at most {0} years.</source>
        <translation>Una pérdida anual de eficiencia está entre 0 y 50 %, en {0} años como mucho.</translation>
    </message>
    <message>
        <source>Nothing was printed: the printer gave up. Check the printer, or export a PDF instead.</source>
        <translation>No se imprimió nada: la impresora se rindió. Compruebe la impresora, o exporte un PDF.</translation>
    </message>
    <message>
        <source>In this air, by ISO 9223: steel {0}, zinc {1}, copper {2}, aluminium {3}. Bare steel loses about {4} µm in its first year.</source>
        <translation>En este aire, según ISO 9223: acero {0}, cinc {1}, cobre {2}, aluminio {3}. El acero desnudo pierde unos {4} µm en su primer año.</translation>
    </message>
    <message>
        <source>All values lie within the range the standard was fitted to.</source>
        <translation>Todos los valores están dentro del intervalo al que se ajustó la norma.</translation>
    </message>
    <message>
        <source>Extrapolated, a rough guide only: outside the range the standard was fitted to lie these values:</source>
        <translation>Extrapolado, solo orientativo: fuera del intervalo al que se ajustó la norma están estos valores:</translation>
    </message>
    <message>
        <source>Weather of {0} hours: on average {1} and {2} of relative humidity.</source>
        <translation>Datos de {0} horas: de media {1} y {2} de humedad relativa.</translation>
    </message>
    <message>
        <source>Wet hours in a year (above 80 % and above 0 °C, ISO 9223): {0}.</source>
        <translation>Horas húmedas al año (más de 80 % y más de 0 °C, ISO 9223): {0}.</translation>
    </message>
    <message>
        <source>A bare suction line at {0} would be below the dew point, and sweat, for {1} of the time.</source>
        <translation>Una línea de succión desnuda a {0} estaría por debajo del punto de rocío, y sudaría, el {1} del tiempo.</translation>
    </message>
    <message>
        <source>The rows do not cover whole years: these are not means of a year.</source>
        <translation>Las filas no cubren años enteros: no son medias de un año.</translation>
    </message>
    <message>
        <source>Rows skipped: {0}; of these, values were missing in {1}.</source>
        <translation>Filas omitidas: {0}; de ellas, en {1} faltaban valores.</translation>
    </message>
    <message>
        <source>price of a new unit</source>
        <translation>precio de una unidad nueva</translation>
    </message>
    <message>
        <source>life of a new unit</source>
        <translation>vida de una unidad nueva</translation>
    </message>
    <message>
        <source>price of electricity</source>
        <translation>precio de la electricidad</translation>
    </message>
    <message>
        <source>hours of cooling a year</source>
        <translation>horas de frío al año</translation>
    </message>
    <message>
        <source>efficiency of the old unit</source>
        <translation>eficiencia de la unidad vieja</translation>
    </message>
    <message>
        <source>efficiency of a new unit</source>
        <translation>eficiencia de una unidad nueva</translation>
    </message>
    <message>
        <source>upkeep of the old unit</source>
        <translation>mantenimiento de la unidad vieja</translation>
    </message>
    <message>
        <source>interest</source>
        <translation>interés</translation>
    </message>
    <message>
        <source>repairs expected of the old unit, a year</source>
        <translation>reparaciones previstas de la unidad vieja, al año</translation>
    </message>
    <message>
        <source>Costs, capacity and hours are numbers of 0 or more. Check them.</source>
        <translation>Los costos, la capacidad y las horas son números de 0 o más. Revíselos.</translation>
    </message>
    <message>
        <source>Carrying on is compared over 1 to {0} years.</source>
        <translation>Seguir se compara en un plazo de 1 a {0} años.</translation>
    </message>
    <message>
        <source>Carry on: about {0} a year, {1} a year if it is replaced.</source>
        <translation>Seguir: unos {0} al año, {1} al año si se cambia.</translation>
    </message>
    <message>
        <source>Replace: carrying on comes to about {0} a year, a new unit to {1}.</source>
        <translation>Cambiar: seguir sale a unos {0} al año, una unidad nueva a {1}.</translation>
    </message>
    <message>
        <source>Costs and days are numbers of 0 or more. Check the part&apos;s costs.</source>
        <translation>Los costos y los días son números de 0 o más. Revise los costos de la pieza.</translation>
    </message>
    <message>
        <source>A chance and an effect lie between 0 and 100 %. Check them.</source>
        <translation>Una probabilidad y un efecto están entre 0 y 100 %. Revíselos.</translation>
    </message>
    <message>
        <source>Rates are numbers of 0 or more a year.</source>
        <translation>Las tasas son números de 0 o más al año.</translation>
    </message>
    <message>
        <source>Money is reckoned over half a year to {0} years, at an interest of 0 to 100 %.</source>
        <translation>El dinero se calcula de medio año a {0} años, con un interés de 0 a 100 %.</translation>
    </message>
    <message>
        <source>{0} is to be expected over the years if it is left now and the best is done later.</source>
        <translation>Cabe esperar {0} a lo largo de los años si ahora se deja y después se hace lo mejor.</translation>
    </message>
    <message>
        <source>It saves {0} against leaving it, and {1} years are gained before it is spent.</source>
        <translation>Ahorra {0} frente a dejarla, y se ganan {1} años antes de que esté agotada.</translation>
    </message>
    <message>
        <source>{0} years are gained before it is spent, for {1} more than leaving it.</source>
        <translation>Se ganan {0} años antes de que esté agotada, por {1} más que dejarla.</translation>
    </message>
    <message>
        <source>Doing nothing until the end costs {0} more than the best choice at each visit.</source>
        <translation>No hacer nada hasta el final cuesta {0} más que la mejor opción en cada visita.</translation>
    </message>
    <message>
        <source>With the spare at hand {0} is to be expected until then and after.</source>
        <translation>Con el repuesto a mano cabe esperar {0} hasta entonces y después.</translation>
    </message>
    <message>
        <source>leave it for now</source>
        <translation>dejarla por ahora</translation>
    </message>
    <message>
        <source>treat it now</source>
        <translation>tratarla ahora</translation>
    </message>
    <message>
        <source>replace it now</source>
        <translation>cambiarla ahora</translation>
    </message>
    <message>
        <source>run it until it is spent</source>
        <translation>usarla hasta que esté agotada</translation>
    </message>
    <message>
        <source>run it with the spare at hand</source>
        <translation>usarla con el repuesto a mano</translation>
    </message>
    <message>
        <source>{0}: this figure is needed. Change its value instead of taking it away.</source>
        <translation>{0}: este valor hace falta. Cámbielo en vez de quitarlo.</translation>
    </message>
    <message>
        <source>Crankcase heater cold on {0}: the compressor shell was only {1} warmer than the air. Liquid in the oil at the first cold start can end the compressor.</source>
        <translation>Resistencia de cárter fría el {0}: la carcasa del compresor estaba solo {1} más caliente que el aire. El líquido en el aceite en el primer arranque en frío puede acabar con el compresor.</translation>
    </message>
    <message>
        <source>The shell measured warm with the heater on for 12 hours, or the heater replaced.</source>
        <translation>La carcasa medida caliente con la resistencia conectada 12 horas, o la resistencia cambiada.</translation>
    </message>
    <message>
        <source>{0} {1}, drifting: it passes its limit of {2} about {3}.</source>
        <translation>{0} {1}, a la deriva: pasa su límite de {2} hacia el {3}.</translation>
    </message>
    <message>
        <source>The part replaced, or a reading that no longer drifts.</source>
        <translation>La pieza cambiada, o una lectura que ya no va a la deriva.</translation>
    </message>
    <message>
        <source>Measured again, inside its limit; last measured on {0}.</source>
        <translation>Medido otra vez, dentro de su límite; última medida el {0}.</translation>
    </message>
    <message>
        <source>{0}{1}, {2}: rusted {3}, {4} more a year.</source>
        <translation>{0}{1}, {2}: oxidado {3}, {4} más al año.</translation>
    </message>
    <message>
        <source>Brushed and coated, or a share that no longer grows.</source>
        <translation>Cepillado y recubierto, o una parte que ya no crece.</translation>
    </message>
    <message>
        <source>{0}{1}, {2}: the wall of {3} is not more than the {4} that must be left. While charged, keep clear of it; a licensed technician decides.</source>
        <translation>{0}{1}, {2}: la pared de {3} no supera los {4} que deben quedar. Mientras tenga carga, no se acerque; decide un técnico con licencia.</translation>
    </message>
    <message>
        <source>{0}{1}, {2}: the wall of {3} reaches the {4} that must be left in about {5} years.</source>
        <translation>{0}{1}, {2}: la pared de {3} llega a los {4} que deben quedar en unos {5} años.</translation>
    </message>
    <message>
        <source>The part replaced; or measured again at the bare spot with a rate that leaves longer.</source>
        <translation>La pieza cambiada; o medida otra vez en el punto desnudo con un ritmo que deje más tiempo.</translation>
    </message>
    <message>
        <source>{0}{1}, {2}: found {3} at {4} {5} on {6} and not coated since; what is wet and bare goes on rusting.</source>
        <translation>{0}{1}, {2}: visto {3} con grado {4} {5} el {6} y sin recubrir desde entonces; lo mojado y desnudo se sigue oxidando.</translation>
    </message>
    <message>
        <source>Found dry, or brushed and coated.</source>
        <translation>Visto seco, o cepillado y recubierto.</translation>
    </message>
    <message>
        <source>{0}{1}, {2}</source>
        <translation>{0}{1}, {2}</translation>
    </message>
    <message>
        <source>Capacitor under load</source>
        <translation>Capacitor con carga</translation>
    </message>
    <message>
        <source>A capacitor under load needs a current and a voltage above zero.</source>
        <translation>Un capacitor con carga necesita una corriente y una tensión mayores que cero.</translation>
    </message>
    <message>
        <source>Insulation resistance {0} at {1}, {2} at 40 °C: below {3}. Dry it and test again before anything is condemned.</source>
        <translation>Resistencia de aislamiento {0} a {1}, {2} a 40 °C: por debajo de {3}. Séquelo y repita antes de condenar nada.</translation>
    </message>
    <message>
        <source>the windings run hotter.</source>
        <translation>los bobinados se calientan más.</translation>
    </message>
    <message>
        <source>Voltage imbalance {0}, above {1}: the windings warm by about {2} more; past 5 % the motor must not run.</source>
        <translation>Desequilibrio de tensiones {0}, por encima de {1}: los bobinados se calientan en torno a un {2} más; pasado el 5 % el motor no debe funcionar.</translation>
    </message>
    <message>
        <source>Current imbalance</source>
        <translation>Desequilibrio de corrientes</translation>
    </message>
    <message>
        <source>one leg works harder: voltage, a connection, or the winding.</source>
        <translation>una fase trabaja más: la tensión, una conexión o el bobinado.</translation>
    </message>
    <message>
        <source>An imbalance needs three values above zero.</source>
        <translation>Un desequilibrio necesita tres valores mayores que cero.</translation>
    </message>
    <message>
        <source>The part replaced, or seen again and found better than feared; acknowledge it once the spare is ordered.</source>
        <translation>Pieza reemplazada, o vista de nuevo y hallada mejor de lo temido; dé el aviso por visto cuando el repuesto esté pedido.</translation>
    </message>
    <message>
        <source>Seen again and found better than feared, worked on, or the part replaced.</source>
        <translation>Visto de nuevo y hallado mejor de lo temido, trabajado, o la pieza reemplazada.</translation>
    </message>
    <message>
        <source>{0}{1}, {2}: the chance that it is spent passes {3} % ({4}) on about {5}. No longer made: look for one in time, or for another way.</source>
        <translation>{0}{1}, {2}: la probabilidad de que esté agotado pasa del {3} % ({4}) hacia el {5}. Ya no se fabrica: busque uno a tiempo, u otra salida.</translation>
    </message>
    <message>
        <source>The wall was {0} on {1} and has about {2} years left; it is measured again after half of that at most, by {3}.</source>
        <translation>La pared medía {0} el {1} y le quedan unos {2} años; se vuelve a medir a lo sumo tras la mitad de ese tiempo, antes del {3}.</translation>
    </message>
    <message>
        <source>The wall was {0} on {1}; no loss could be measured yet, so it is measured again by {2}.</source>
        <translation>La pared medía {0} el {1}; aún no se pudo medir ninguna pérdida, así que se vuelve a medir antes del {2}.</translation>
    </message>
    <message>
        <source>{0}{1}, {2}: measure the wall</source>
        <translation>{0}{1}, {2}: medir la pared</translation>
    </message>
    <message>
        <source>Never seen yet. {0}{1}, {2}: by the usual life of its kind the chance that it is spent passed {3} % ({4}) on about {5}, so it is due now.</source>
        <translation>Aún no visto nunca. {0}{1}, {2}: por la vida habitual de su clase, la probabilidad de que esté agotado pasó del {3} % ({4}) hacia el {5}, así que toca ahora.</translation>
    </message>
    <message>
        <source>Never seen yet. {0}{1}, {2}: by the usual life of its kind the chance that it is spent passes {3} % ({4}) on about {5}.</source>
        <translation>Aún no visto nunca. {0}{1}, {2}: por la vida habitual de su clase, la probabilidad de que esté agotado pasa del {3} % ({4}) hacia el {5}.</translation>
    </message>
    <message>
        <source>{6}: {0} {1} when last seen on {2}; the chance that it is spent was over {3} % ({4}) even then, so it is due now.</source>
        <translation>{6}: {0} {1} cuando se vio por última vez el {2}; la probabilidad de que esté agotado ya superaba entonces el {3} % ({4}), así que toca ahora.</translation>
    </message>
    <message>
        <source>{0} {1} when last seen on {2}; the chance that it is spent was over {3} % ({4}) even then, so it is due now.</source>
        <translation>{0} {1} cuando se vio por última vez el {2}; la probabilidad de que esté agotado ya superaba entonces el {3} % ({4}), así que toca ahora.</translation>
    </message>
    <message>
        <source>{6}: {0} {1} when last seen on {2}; the chance that it is spent passed {3} % ({4}) on about {5}, so it is due now.</source>
        <translation>{6}: {0} {1} cuando se vio por última vez el {2}; la probabilidad de que esté agotado pasó del {3} % ({4}) hacia el {5}, así que toca ahora.</translation>
    </message>
    <message>
        <source>{0} {1} when last seen on {2}; the chance that it is spent passed {3} % ({4}) on about {5}, so it is due now.</source>
        <translation>{0} {1} cuando se vio por última vez el {2}; la probabilidad de que esté agotado pasó del {3} % ({4}) hacia el {5}, así que toca ahora.</translation>
    </message>
    <message>
        <source>{6}: {0} {1} when last seen on {2}; the chance that it is spent passes {3} % ({4}) on about {5}.</source>
        <translation>{6}: {0} {1} cuando se vio por última vez el {2}; la probabilidad de que esté agotado pasa del {3} % ({4}) hacia el {5}.</translation>
    </message>
    <message>
        <source>{0} {1} when last seen on {2}; the chance that it is spent passes {3} % ({4}) on about {5}.</source>
        <translation>{0} {1} cuando se vio por última vez el {2}; la probabilidad de que esté agotado pasa del {3} % ({4}) hacia el {5}.</translation>
    </message>
    <message>
        <source>This acknowledgement is not in the file, or was taken back already.</source>
        <translation>Este visto no está en el archivo, o ya se retiró.</translation>
    </message>
    <message>
        <source>Order a spare</source>
        <translation>Pedir un repuesto</translation>
    </message>
    <message>
        <source>{0}{1}, {2}: the chance that it is spent passes {3} % ({4}) on about {5}. Days a spare takes: about {6}.</source>
        <translation>{0}{1}, {2}: la probabilidad de que esté agotado pasa del {3} % ({4}) hacia el {5}. Días que tarda un repuesto: unos {6}.</translation>
    </message>
    <message>
        <source>Price of {0} per kg</source>
        <translation>Precio de {0} por kg</translation>
    </message>
    <message>
        <source>{0}, in %</source>
        <translation>{0}, en %</translation>
    </message>
    <message>
        <source>Cost of a new one</source>
        <translation>Coste de una nueva</translation>
    </message>
    <message>
        <source>Cost of fitting it</source>
        <translation>Coste de montarla</translation>
    </message>
    <message>
        <source>Cost of one treatment</source>
        <translation>Coste de un tratamiento</translation>
    </message>
    <message>
        <source>Damage if nobody notices in time</source>
        <translation>Daño si nadie lo nota a tiempo</translation>
    </message>
    <message>
        <source>Chance in % that nobody notices in time</source>
        <translation>Probabilidad en % de que nadie lo note a tiempo</translation>
    </message>
    <message>
        <source>Cost of a day without the unit</source>
        <translation>Coste de un día sin la unidad</translation>
    </message>
    <message>
        <source>Cost of a spare at hand, a year</source>
        <translation>Coste de tener un repuesto a mano, al año</translation>
    </message>
    <message>
        <source>Price of electricity per kWh</source>
        <translation>Precio de la electricidad por kWh</translation>
    </message>
    <message>
        <source>Cost of a visit</source>
        <translation>Coste de una visita</translation>
    </message>
    <message>
        <source>Visits a year</source>
        <translation>Visitas al año</translation>
    </message>
    <message>
        <source>Interest of a year</source>
        <translation>Interés de un año</translation>
    </message>
    <message>
        <source>Years compared</source>
        <translation>Años comparados</translation>
    </message>
    <message>
        <source>Life of a new unit</source>
        <translation>Vida de una unidad nueva</translation>
    </message>
    <message>
        <source>Efficiency this unit loses a year</source>
        <translation>Eficiencia que pierde esta unidad al año</translation>
    </message>
    <message>
        <source>Efficiency a new unit loses a year</source>
        <translation>Eficiencia que pierde una unidad nueva al año</translation>
    </message>
    <message>
        <source>{0}: a day like 2026-05-04 is needed here.</source>
        <translation>{0}: aquí hace falta un día como 2026-05-04.</translation>
    </message>
    <message>
        <source>{0}: there is no refrigerant with this code.</source>
        <translation>{0}: no hay ningún refrigerante con este código.</translation>
    </message>
    <message>
        <source>Learning was stopped.</source>
        <translation>El aprendizaje se detuvo.</translation>
    </message>
    <message>
        <source>The wall measured leads: {0} on {1}, and {2} must be left.</source>
        <translation>Manda la pared medida: {0} el {1}, y deben quedar {2}.</translation>
    </message>
    <message>
        <source>The wall measured leads: {0} on {1}, {2} must be left, and it loses {3} ± {4} a year.</source>
        <translation>Manda la pared medida: {0} el {1}, deben quedar {2} y pierde {3} ± {4} al año.</translation>
    </message>
    <message>
        <source>The rusted share measured leads: {0} on {1}; from {2} on the zone counts as spent.</source>
        <translation>Manda la parte oxidada medida: {0} el {1}; desde {2} la zona se considera agotada.</translation>
    </message>
    <message>
        <source>The rusted share measured leads: {0} on {1}, {3} ± {4} more a year; from {2} on the zone counts as spent.</source>
        <translation>Manda la parte oxidada medida: {0} el {1}, {3} ± {4} más al año; desde {2} la zona se considera agotada.</translation>
    </message>
    <message>
        <source>By {0} alone it would be spent much later.</source>
        <translation>Solo por {0} quedaría agotada mucho después.</translation>
    </message>
    <message>
        <source>By {0} alone it would be spent from {1} on (10 %).</source>
        <translation>Solo por {0} quedaría agotada desde el {1} (10 %).</translation>
    </message>
    <message>
        <source>By {0} alone it would be spent from {1} on (10 %), in the middle by {2} (50 %).</source>
        <translation>Solo por {0} quedaría agotada desde el {1} (10 %), a la mitad el {2} (50 %).</translation>
    </message>
    <message>
        <source>the grades seen</source>
        <translation>los grados vistos</translation>
    </message>
    <message>
        <source>the wall measured</source>
        <translation>la pared medida</translation>
    </message>
    <message>
        <source>the rusted share measured</source>
        <translation>la parte oxidada medida</translation>
    </message>
    <message>
        <source>A new part: its outlook begins afresh.</source>
        <translation>Una pieza nueva: su previsión empieza de cero.</translation>
    </message>
    <message>
        <source>Repaired at this visit.</source>
        <translation>Reparada en esta visita.</translation>
    </message>
    <message>
        <source>Cleaned: the dirt begins anew.</source>
        <translation>Limpia: la suciedad empieza de cero.</translation>
    </message>
    <message>
        <source>Protected: it gets worse more slowly now; what lies under it is not better for it.</source>
        <translation>Protegida: ahora empeora más despacio; lo que hay debajo no está mejor por ello.</translation>
    </message>
    <message>
        <source>Found {0} {1}: more than was expected by now.</source>
        <translation>Hallado {0} {1}: más de lo que se esperaba a estas alturas.</translation>
    </message>
    <message>
        <source>Found {0} {1}: less than might have been by now.</source>
        <translation>Hallado {0} {1}: menos de lo que podía haber sido a estas alturas.</translation>
    </message>
    <message>
        <source>Found {0} {1}: it gets worse faster than its kind, at about {2} times the pace.</source>
        <translation>Hallado {0} {1}: empeora más deprisa que su clase, a unas {2} veces el ritmo.</translation>
    </message>
    <message>
        <source>Found {0} {1}: it gets worse more slowly than its kind, at about {2} times the pace.</source>
        <translation>Hallado {0} {1}: empeora más despacio que su clase, a unas {2} veces el ritmo.</translation>
    </message>
    <message>
        <source>What was measured at this visit leads: {0}.</source>
        <translation>Manda lo medido en esta visita: {0}.</translation>
    </message>
    <message>
        <source>Not seen: less certain than when it was last told.</source>
        <translation>No se vio: menos seguro que cuando se dijo por última vez.</translation>
    </message>
    <message>
        <source>{0}: {1}</source>
        <translation>{0}: {1}</translation>
    </message>
    <message>
        <source>Once it is spent, the unit is taken to be given up: the price of a new unit stands in for that of the part.</source>
        <translation>Una vez agotada, se da por hecho que se abandona la unidad: el precio de una unidad nueva ocupa el lugar del de la pieza.</translation>
    </message>
    <message>
        <source>Price of a new unit, fitted</source>
        <translation>Precio de una unidad nueva, montada</translation>
    </message>
    <message>
        <source>Lost refrigerant is not counted: the unit&apos;s refrigerant and factory charge are not both known.</source>
        <translation>El refrigerante perdido no se cuenta: no se conocen a la vez el refrigerante de la unidad y su carga de fábrica.</translation>
    </message>
    <message>
        <source>About {0} years are to be expected of it within the years compared.</source>
        <translation>Cabe esperar de ella unos {0} años dentro de los años comparados.</translation>
    </message>
    <message>
        <source>{0} years are gained before it is spent.</source>
        <translation>Se ganan {0} años antes de que se agote.</translation>
    </message>
    <message>
        <source>no cooling or heating</source>
        <translation>sin frío ni calor</translation>
    </message>
    <message>
        <source>charge or compressor lost</source>
        <translation>carga o compresor perdidos</translation>
    </message>
    <message>
        <source>the unit ends</source>
        <translation>fin de la unidad</translation>
    </message>
    <message>
        <source>SEER of this unit, as on its label</source>
        <translation>SEER de esta unidad, según su etiqueta</translation>
    </message>
    <message>
        <source>SEER of a new unit</source>
        <translation>SEER de una unidad nueva</translation>
    </message>
    <message>
        <source>Rated cooling</source>
        <translation>Potencia frigorífica nominal</translation>
    </message>
    <message>
        <source>Hours of cooling at full load, a year</source>
        <translation>Horas de frío a plena carga, al año</translation>
    </message>
    <message>
        <source>No repair can be reckoned yet: give the costs of at least one part.</source>
        <translation>Todavía no se puede calcular ninguna reparación: indique los costes de al menos una pieza.</translation>
    </message>
    <message>
        <source>Electricity is left out on both sides: not everything it takes is given.</source>
        <translation>La electricidad no se cuenta en ningún lado: no se ha indicado todo lo necesario.</translation>
    </message>
    <message>
        <source>Electricity for cooling only; both SEER must be of the same scale (SEER or SEER2).</source>
        <translation>Solo electricidad para enfriar; ambos SEER deben ser de la misma escala (SEER o SEER2).</translation>
    </message>
    <message>
        <source>Its age is not known: its efficiency is taken as on the label.</source>
        <translation>No se conoce su edad: se toma la eficiencia de la etiqueta.</translation>
    </message>
    <message>
        <source>nothing kept yet</source>
        <translation>aún no se guarda nada</translation>
    </message>
    <message>
        <source>nothing due yet</source>
        <translation>aún no vence nada</translation>
    </message>
    <message>
        <source>too few to say</source>
        <translation>muy pocos para decirlo</translation>
    </message>
    <message>
        <source>can be trusted so far</source>
        <translation>de fiar hasta ahora</translation>
    </message>
    <message>
        <source>no better than the plain share</source>
        <translation>no mejor que la simple proporción</translation>
    </message>
    <message>
        <source>too gloomy</source>
        <translation>demasiado pesimistas</translation>
    </message>
    <message>
        <source>too hopeful</source>
        <translation>demasiado optimistas</translation>
    </message>
    <message>
        <source>No forecasts are kept yet: from now on they are, each time a visit is closed.</source>
        <translation>Aún no se guardan pronósticos: desde ahora sí, cada vez que se cierra una visita.</translation>
    </message>
    <message>
        <source>Nothing can be said yet: the next forecasts come due on {0}; the first visit after that settles them.</source>
        <translation>Aún no se puede decir nada: los próximos pronósticos vencen el {0}; la primera visita posterior los resuelve.</translation>
    </message>
    <message>
        <source>Too few to say: {0} forecasts about {1} zones have been settled by later visits; at least {2} about {3} zones are needed.</source>
        <translation>Muy pocos para decirlo: las visitas posteriores han resuelto {0} pronósticos sobre {1} zonas; hacen falta al menos {2} sobre {3} zonas.</translation>
    </message>
    <message>
        <source>Too gloomy so far: of {1} forecasts for {0}, {3} were expected to be found spent and {2} were.</source>
        <translation>Demasiado pesimistas hasta ahora: de {1} pronósticos para {0}, se esperaba encontrar {3} agotados y fueron {2}.</translation>
    </message>
    <message>
        <source>Too hopeful so far: of {1} forecasts for {0}, {3} were expected to be found spent and {2} were.</source>
        <translation>Demasiado optimistas hasta ahora: de {1} pronósticos para {0}, se esperaba encontrar {3} agotados y fueron {2}.</translation>
    </message>
    <message>
        <source>Right on the whole, but not better at telling which zones will be spent than the plain share: of {1} forecasts for {0}, {3} were expected to be found spent and {2} were.</source>
        <translation>Aciertan en conjunto, pero no distinguen mejor que la simple proporción qué zonas se agotarán: de {1} pronósticos para {0}, se esperaba encontrar {3} agotados y fueron {2}.</translation>
    </message>
    <message>
        <source>Can be trusted so far: of {1} forecasts for {0}, {3} were expected to be found spent and {2} were.</source>
        <translation>De fiar hasta ahora: de {1} pronósticos para {0}, se esperaba encontrar {3} agotados y fueron {2}.</translation>
    </message>
    <message>
        <source>The difference is {0} times its standard error; up to {1} it may well be chance.</source>
        <translation>La diferencia es {0} veces su error típico; hasta {1} bien puede ser azar.</translation>
    </message>
    <message>
        <source>All of them ended alike, so nothing shows yet whether the forecasts tell one zone from another.</source>
        <translation>Todos acabaron igual, así que aún nada muestra si los pronósticos distinguen una zona de otra.</translation>
    </message>
    <message>
        <source>{0} more will never be settled: the zone was replaced, made good or cleaned in time, or the day lies between two visits that found it otherwise. Work in time takes out more of the bad ones, which makes forecasts look too gloomy.</source>
        <translation>Otros {0} no se resolverán nunca: la zona se sustituyó, se reparó o se limpió a tiempo, o el día cae entre dos visitas que la encontraron distinta. El trabajo a tiempo quita sobre todo las malas, y eso hace que los pronósticos parezcan demasiado pesimistas.</translation>
    </message>
    <message>
        <source>half a year</source>
        <translation>medio año</translation>
    </message>
    <message>
        <source>one year</source>
        <translation>un año</translation>
    </message>
    <message>
        <source>two years</source>
        <translation>dos años</translation>
    </message>
    <message>
        <source>five years</source>
        <translation>cinco años</translation>
    </message>
    <message>
        <source>At no visit is there anything better to do.</source>
        <translation>En ninguna visita hay nada mejor que hacer.</translation>
    </message>
    <message>
        <source>{0}{1}, {2}: by {3} the chance that it is spent is {4}, more than the {5} % tolerated ({6}), and this part is no longer made. Look for one in time, or for another way.</source>
        <translation>{0}{1}, {2}: para el {3} la probabilidad de que esté agotado es de {4}, más del {5} % tolerado ({6}), y esta pieza ya no se fabrica. Busque una a tiempo, u otra salida.</translation>
    </message>
    <message>
        <source>{0}{1}, {2}: a spare ordered today is there by about {3}; the chance that it is spent by then is {4}, more than the {5} % tolerated ({6}). Order one now.</source>
        <translation>{0}{1}, {2}: un repuesto pedido hoy llega hacia el {3}; la probabilidad de que para entonces esté agotado es de {4}, más del {5} % tolerado ({6}). Pídalo ahora.</translation>
    </message>
    <message>
        <source>{0}{1}, {2}: never seen; by the usual life of its kind the chance that it is spent before the next visit ({4}) is {3}, more than the {5} % tolerated ({6}).</source>
        <translation>{0}{1}, {2}: nunca visto; por la vida habitual de su clase, la probabilidad de que esté agotado antes de la próxima visita ({4}) es de {3}, más del {5} % tolerado ({6}).</translation>
    </message>
    <message>
        <source>{0}{1}, {2}: {7} {8} on {9}; the chance that it is spent before the next visit ({4}) is {3}, more than the {5} % tolerated ({6}).</source>
        <translation>{0}{1}, {2}: {7} {8} el {9}; la probabilidad de que esté agotado antes de la próxima visita ({4}) es de {3}, más del {5} % tolerado ({6}).</translation>
    </message>
    <message>
        <source>{0} %</source>
        <translation>{0} %</translation>
    </message>
    <message>
        <source>under {0} %</source>
        <translation>menos del {0} %</translation>
    </message>
    <message>
        <source>over {0} %</source>
        <translation>más del {0} %</translation>
    </message>
    <message>
        <source>{0}{1}, {2}: the chance that it is spent is {7} today, more than the {3} % tolerated ({4}). Days a spare takes: about {6}.</source>
        <translation>{0}{1}, {2}: la probabilidad de que esté agotado es hoy de {7}, más del {3} % tolerado ({4}). Días que tarda un repuesto: unos {6}.</translation>
    </message>
    <message>
        <source>{0}{1} is the likeliest to stop it by {2}, with a chance of {3}. Parts are taken to fail independently of each other.</source>
        <translation>{0}{1}: la pieza que más probablemente lo detenga de aquí al {2}, con una probabilidad de {3}. Se supone que las piezas fallan independientemente unas de otras.</translation>
    </message>
    <message>
        <source>The mean square of what was said less what came (Brier score) is {0}; always saying the share that came to pass, {1}, would have given {2}.</source>
        <translation>La media del cuadrado de lo dicho menos lo ocurrido (puntuación de Brier) es {0}; decir siempre la proporción que ocurrió, {1}, habría dado {2}.</translation>
    </message>
    <message>
        <source>{0}{1}, {2}: {3} within {4} was said on {5}; found spent on {6}, after {7} months.</source>
        <translation>{0}{1}, {2}: {3} en {4} se dijo el {5}; encontrado agotado el {6}, a los {7} meses.</translation>
    </message>
    <message>
        <source>{0}{1}, {2}: {3} within {4} was said on {5}; still {8} {9} on {6}, after {7} months.</source>
        <translation>{0}{1}, {2}: {3} en {4} se dijo el {5}; aún {8} {9} el {6}, a los {7} meses.</translation>
    </message>
    <message>
        <source>This rests on the forecasts made with the lives in use now: those since {0}, when they were learned from your records.</source>
        <translation>Se apoya en los pronósticos hechos con las vidas útiles ahora en uso: los posteriores al {0}, cuando se aprendieron de sus registros.</translation>
    </message>
    <message>
        <source>They were learned from your records on {0}.</source>
        <translation>Se aprendieron de sus registros el {0}.</translation>
    </message>
    <message>
        <source>This rests on the forecasts made with the lives in use now: those since they were learned from your records, part kind by part kind from {0} to {1}.</source>
        <translation>Se apoya en los pronósticos hechos con las vidas útiles ahora en uso: los posteriores a que se aprendieran de sus registros, tipo de pieza por tipo de pieza, del {0} al {1}.</translation>
    </message>
    <message>
        <source>They were learned from your records, part kind by part kind from {0} to {1}.</source>
        <translation>Se aprendieron de sus registros, tipo de pieza por tipo de pieza, del {0} al {1}.</translation>
    </message>
    <message>
        <source>Part kinds whose lives were not learned count with all their forecasts.</source>
        <translation>Los tipos de pieza cuya vida útil no se aprendió cuentan con todos sus pronósticos.</translation>
    </message>
    <message>
        <source>Which lives an old forecast was made with is told by its day alone.</source>
        <translation>Con qué vidas útiles se hizo un pronóstico antiguo solo se sabe por su fecha.</translation>
    </message>
    <message>
        <source>all forecasts</source>
        <translation>todos los pronósticos</translation>
    </message>
    <message>
        <source>made with the lives in use now</source>
        <translation>hechos con las vidas útiles ahora en uso</translation>
    </message>
    <message>
        <source>made before these were learned</source>
        <translation>hechos antes de aprenderlas</translation>
    </message>
    <message>
        <source>Nothing can be said yet of the lives in use now: the next visit that is closed keeps the first forecasts made with them.</source>
        <translation>Aún no se puede decir nada de las vidas útiles ahora en uso: la próxima visita que se cierre guarda los primeros pronósticos hechos con ellas.</translation>
    </message>
    <message>
        <source>Nothing can be said yet of the lives in use now: the next forecasts made with them come due on {0}; the first visit after that settles them.</source>
        <translation>Aún no se puede decir nada de las vidas útiles ahora en uso: los próximos pronósticos hechos con ellas vencen el {0}; la primera visita posterior los resuelve.</translation>
    </message>
    <message>
        <source>Too few to say of the lives in use now: {0} forecasts about {1} zones made with them have been settled by later visits; at least {2} about {3} zones are needed.</source>
        <translation>Muy pocos para juzgar las vidas útiles ahora en uso: las visitas posteriores han resuelto {0} pronósticos hechos con ellas, sobre {1} zonas; hacen falta al menos {2} sobre {3} zonas.</translation>
    </message>
    <message>
        <source>Of the forecasts made before that, too few have been settled to say how good they were.</source>
        <translation>De los pronósticos hechos antes se han resuelto demasiado pocos para decir si eran buenos.</translation>
    </message>
    <message>
        <source>Before that, forecasts were too gloomy: of {1} for {0}, {3} were expected to be found spent and {2} were.</source>
        <translation>Antes los pronósticos eran demasiado pesimistas: de {1} para {0}, se esperaba encontrar {3} agotados y fueron {2}.</translation>
    </message>
    <message>
        <source>Before that, forecasts were too hopeful: of {1} for {0}, {3} were expected to be found spent and {2} were.</source>
        <translation>Antes los pronósticos eran demasiado optimistas: de {1} para {0}, se esperaba encontrar {3} agotados y fueron {2}.</translation>
    </message>
    <message>
        <source>Before that, forecasts were right on the whole, but not better at telling which zones will be spent than the plain share: of {1} for {0}, {3} were expected to be found spent and {2} were.</source>
        <translation>Antes los pronósticos acertaban en conjunto, pero no distinguían mejor que la simple proporción qué zonas se agotarían: de {1} para {0}, se esperaba encontrar {3} agotados y fueron {2}.</translation>
    </message>
    <message>
        <source>Before that, forecasts could be trusted: of {1} for {0}, {3} were expected to be found spent and {2} were.</source>
        <translation>Antes los pronósticos eran de fiar: de {1} para {0}, se esperaba encontrar {3} agotados y fueron {2}.</translation>
    </message>
    <message>
        <source>That the share did better may well be chance.</source>
        <translation>Es posible que la proporción haya sido mejor por casualidad.</translation>
    </message>
    <message>
        <source>The chance that something is already spent when you look at it rises from {0} to {1} if you go on {2} instead of {3}.</source>
        <translation>La probabilidad de que algo ya esté agotado cuando lo mire sube de {0} a {1} si va el {2} en vez del {3}.</translation>
    </message>
    <message>
        <source>{0}{1}, {2} ({5}): the chance that it is spent before you see it rises most, from {3} to {4}, past the {6} % tolerated.</source>
        <translation>{0}{1}, {2} ({5}): aquí es donde más sube la probabilidad de que se agote antes de que lo vea, de {3} a {4}, por encima del {6} % tolerado.</translation>
    </message>
    <message>
        <source>{0}{1}, {2} ({5}): the chance that it is spent before you see it rises most, from {3} to {4}.</source>
        <translation>{0}{1}, {2} ({5}): aquí es donde más sube la probabilidad de que se agote antes de que lo vea, de {3} a {4}.</translation>
    </message>
    <message>
        <source>When to look again</source>
        <translation>Cuándo volver a mirar</translation>
    </message>
    <message>
        <source>Flags</source>
        <translation>Avisos</translation>
    </message>
    <message>
        <source>Forecasts</source>
        <translation>Pronósticos</translation>
    </message>
    <message>
        <source>%</source>
        <translation>%</translation>
    </message>
    <message>
        <source>days</source>
        <translation>días</translation>
    </message>
    <message>
        <source>months</source>
        <translation>meses</translation>
    </message>
    <message>
        <source>years</source>
        <translation>años</translation>
    </message>
    <message>
        <source>number</source>
        <translation>número</translation>
    </message>
    <message>
        <source>{0}, in {1}</source>
        <translation>{0}, en {1}</translation>
    </message>
    <message>
        <source>Lead time of a spare, in days</source>
        <translation>Plazo de entrega de un repuesto, en días</translation>
    </message>
    <message>
        <source>Spares are still made, yes or no</source>
        <translation>Aún se fabrican repuestos, sí o no</translation>
    </message>
    <message>
        <source>From ordering a spare to having it at hand; it is to be ordered so long before the part may be spent.</source>
        <translation>Desde pedir un repuesto hasta tenerlo a mano; hay que pedirlo con esa antelación a que la pieza pueda agotarse.</translation>
    </message>
    <message>
        <source>Where a spare is no longer made, the parts to order say so.</source>
        <translation>Si un repuesto ya no se fabrica, las piezas por pedir lo dicen.</translation>
    </message>
    <message>
        <source>Shares of a life at grades 1 to 4</source>
        <translation>Partes de una vida en los grados 1 a 4</translation>
    </message>
    <message>
        <source>How a life is split over the grades before spent; four shares that add up to 1.</source>
        <translation>Cómo se reparte una vida entre los grados anteriores a agotado; cuatro partes que suman 1.</translation>
    </message>
    <message>
        <source>How much “{0}” slows decay, in %</source>
        <translation>Cuánto frena el deterioro «{0}», en %</translation>
    </message>
    <message>
        <source>While this work holds, decay is slower by this much; at 0 it does nothing.</source>
        <translation>Mientras dura este trabajo, el deterioro es más lento en esta medida; con 0 no hace nada.</translation>
    </message>
    <message>
        <source>How long “{0}” holds, in years</source>
        <translation>Cuánto dura «{0}», en años</translation>
    </message>
    <message>
        <source>After this time the zone decays as if the work had not been done.</source>
        <translation>Pasado este tiempo la zona se deteriora como si el trabajo no se hubiera hecho.</translation>
    </message>
    <message>
        <source>{0}: a whole number is needed here.</source>
        <translation>{0}: aquí hace falta un número entero.</translation>
    </message>
    <message>
        <source>Median life of parts that last as long as the unit, in years</source>
        <translation>Vida mediana de las piezas que duran lo que la unidad, en años</translation>
    </message>
    <message>
        <source>It stands in where a part kind has no median life of its own.</source>
        <translation>Se usa cuando un tipo de pieza no tiene vida mediana propia.</translation>
    </message>
    <message>
        <source>Time from clean to blocked, in years</source>
        <translation>Tiempo de limpio a obstruido, en años</translation>
    </message>
    <message>
        <source>The median for zones that get dirty rather than decay.</source>
        <translation>La mediana de las zonas que se ensucian en vez de deteriorarse.</translation>
    </message>
    <message>
        <source>Spread of the pace among zones of one kind</source>
        <translation>Dispersión del ritmo entre zonas de un mismo tipo</translation>
    </message>
    <message>
        <source>Each zone has its own pace, spread by this much (standard deviation of the logarithm) round that of its kind; the wider, the more a zone&apos;s own grades count.</source>
        <translation>Cada zona tiene su propio ritmo, disperso en esta medida (desviación típica del logaritmo) en torno al de su tipo; cuanto más, más cuentan los grados de la propia zona.</translation>
    </message>
    <message>
        <source>Slowest a site&apos;s air lets zones rust, times the usual</source>
        <translation>Lo más lento que el aire de un sitio deja oxidarse una zona, veces lo habitual</translation>
    </message>
    <message>
        <source>However mild a site&apos;s air is, a zone that rusts ages no slower than this.</source>
        <translation>Por suave que sea el aire de un sitio, una zona que se oxida no envejece más despacio que esto.</translation>
    </message>
    <message>
        <source>Fastest a site&apos;s air lets zones rust, times the usual</source>
        <translation>Lo más rápido que el aire de un sitio hace oxidarse una zona, veces lo habitual</translation>
    </message>
    <message>
        <source>However salty a site&apos;s air is, a zone that rusts ages no faster than this.</source>
        <translation>Por salino que sea el aire de un sitio, una zona que se oxida no envejece más deprisa que esto.</translation>
    </message>
    <message>
        <source>Rusting zone found damp, times the usual</source>
        <translation>Zona que se oxida, hallada húmeda, veces lo habitual</translation>
    </message>
    <message>
        <source>A zone that rusts and was found damp ages this many times as fast.</source>
        <translation>Una zona que se oxida y se halló húmeda envejece tantas veces más deprisa.</translation>
    </message>
    <message>
        <source>Rusting zone found wet, times the usual</source>
        <translation>Zona que se oxida, hallada mojada, veces lo habitual</translation>
    </message>
    <message>
        <source>A zone that rusts and was found wet ages this many times as fast.</source>
        <translation>Una zona que se oxida y se halló mojada envejece tantas veces más deprisa.</translation>
    </message>
    <message>
        <source>How far learned rates may lie from ours</source>
        <translation>Cuánto pueden alejarse de las nuestras las tasas aprendidas</translation>
    </message>
    <message>
        <source>Rates learned from records are expected to lie within about this much (standard deviation of the logarithm) of ours; the larger, the more the records count.</source>
        <translation>Se espera que las tasas aprendidas de los registros se alejen de las nuestras más o menos en esta medida (desviación típica del logaritmo); cuanto mayor, más cuentan los registros.</translation>
    </message>
    <message>
        <source>Furthest date that is told, in years</source>
        <translation>Fecha más lejana que se dice, en años</translation>
    </message>
    <message>
        <source>What lies further ahead than this is not given a date.</source>
        <translation>A lo que queda más lejos que esto no se le da fecha.</translation>
    </message>
    <message>
        <source>“{0}” can&apos;t stand beside amounts of money. Give the currency&apos;s name or sign without figures, like EUR, $ or kr, in at most {1} letters.</source>
        <translation>«{0}» no puede ir junto a importes de dinero. Dé el nombre o el signo de la moneda sin cifras, como EUR, $ o kr, con {1} letras como mucho.</translation>
    </message>
    <message>
        <source>{0}: {1} instead of {2}</source>
        <translation>{0}: {1} en vez de {2}</translation>
    </message>
    <message>
        <source>{0}: {1} years instead of {2}</source>
        <translation>{0}: {1} años en vez de {2}</translation>
    </message>
    <message>
        <source>{0}: {1} h instead of {2} h</source>
        <translation>{0}: {1} h en vez de {2} h</translation>
    </message>
    <message>
        <source>{0}: SEER {1} instead of {2}</source>
        <translation>{0}: SEER {1} en vez de {2}</translation>
    </message>
    <message>
        <source>yes</source>
        <translation>sí</translation>
    </message>
    <message>
        <source>no</source>
        <translation>no</translation>
    </message>
    <message>
        <source>“{0}” is neither “{1}” nor “{2}”. Choose one of the two.</source>
        <translation>«{0}» no es ni «{1}» ni «{2}». Elija uno de los dos.</translation>
    </message>
    <message>
        <source>A week is missing: write a number from 1 to 53, as calendars number them (ISO 8601).</source>
        <translation>Falta una semana: escriba un número de 1 a 53, como las numeran los calendarios (ISO 8601).</translation>
    </message>
</context>
<context>
    <name>padside::AcknowledgeDialog</name>
    <message>
        <source>Acknowledge a flag</source>
        <translation>Dar un aviso por visto</translation>
    </message>
    <message>
        <source>Reason</source>
        <translation>Motivo</translation>
    </message>
    <message>
        <source>The spare is ordered</source>
        <translation>El repuesto está pedido</translation>
    </message>
    <message>
        <source>The customer knows and waits</source>
        <translation>El cliente lo sabe y espera</translation>
    </message>
    <message>
        <source>Work is planned</source>
        <translation>El trabajo está previsto</translation>
    </message>
    <message>
        <source>Usual for this unit</source>
        <translation>Habitual en esta unidad</translation>
    </message>
    <message>
        <source>Why it may stand as it is</source>
        <translation>Por qué puede quedar como está</translation>
    </message>
    <message>
        <source>&amp;Reason</source>
        <translation>&amp;Motivo</translation>
    </message>
    <message>
        <source>Ac&amp;knowledge</source>
        <translation>Dar por &amp;visto</translation>
    </message>
    <message>
        <source>An acknowledged flag stands below the others and is not counted. It comes back when it gets worse.</source>
        <translation>Un aviso dado por visto queda debajo de los demás y no se cuenta. Vuelve cuando empeora.</translation>
    </message>
</context>
<context>
    <name>padside::CautionLine</name>
    <message>
        <source>Cautions: %1</source>
        <translation>Precauciones: %1</translation>
    </message>
</context>
<context>
    <name>padside::ChargePanel</name>
    <message>
        <source>Refrigerant</source>
        <translation>Refrigerante</translation>
    </message>
    <message>
        <source>Cylinder</source>
        <translation>Cilindro</translation>
    </message>
    <message>
        <source>Because</source>
        <translation>Motivo</translation>
    </message>
    <message>
        <source>Enter this amount</source>
        <translation>Anotar esta cantidad</translation>
    </message>
    <message>
        <source>Refrigerant %1</source>
        <translation>Refrigerante %1</translation>
    </message>
    <message>
        <source>Mass of refrigerant</source>
        <translation>Masa de refrigerante</translation>
    </message>
    <message>
        <source>leak, repair, first charge</source>
        <translation>fuga, reparación, primera carga</translation>
    </message>
    <message>
        <source>Mass</source>
        <translation>Masa</translation>
    </message>
    <message>
        <source>Recover refrigerant, never vent it; certified people only.</source>
        <translation>Recupere el refrigerante, no lo libere nunca; solo personas certificadas.</translation>
    </message>
    <message>
        <source>cylinder %1</source>
        <translation>cilindro %1</translation>
    </message>
    <message>
        <source>Type how much refrigerant it was, like 200 g.</source>
        <translation>Escriba cuánto refrigerante fue, por ejemplo 200 g.</translation>
    </message>
    <message>
        <source>A mass can&apos;t be below zero. Choose “recovered” for what was taken out.</source>
        <translation>Una masa no puede ser menor que cero. Elija «recuperado» para lo que se sacó.</translation>
    </message>
    <message>
        <source>Type which refrigerant it was, like R-410A.</source>
        <translation>Escriba qué refrigerante fue, por ejemplo R-410A.</translation>
    </message>
    <message>
        <source>Enter the correction</source>
        <translation>Anotar la corrección</translation>
    </message>
    <message>
        <source>The account of this unit, with what is typed:</source>
        <translation>La cuenta de esta unidad, con lo escrito:</translation>
    </message>
    <message>
        <source>The account of this unit:</source>
        <translation>La cuenta de esta unidad:</translation>
    </message>
    <message>
        <source>In %1, recovered %2, lost %3.</source>
        <translation>Añadido %1, recuperado %2, perdido %3.</translation>
    </message>
</context>
<context>
    <name>padside::ClosingPanel</name>
    <message>
        <source>Go to the next of them</source>
        <translation>Ir a la siguiente</translation>
    </message>
    <message>
        <source>Close the visit</source>
        <translation>Cerrar la visita</translation>
    </message>
    <message>
        <source>Close it now</source>
        <translation>Cerrarla ahora</translation>
    </message>
    <message>
        <source>Keep it open</source>
        <translation>Dejarla abierta</translation>
    </message>
    <message>
        <source>Correct an entry</source>
        <translation>Corregir una anotación</translation>
    </message>
    <message>
        <source>Note on the whole visit</source>
        <translation>Nota sobre toda la visita</translation>
    </message>
    <message>
        <source>Why an entry is corrected</source>
        <translation>Por qué se corrige una anotación</translation>
    </message>
    <message>
        <source>Why? (needed)</source>
        <translation>¿Por qué? (necesario)</translation>
    </message>
    <message>
        <source>This visit is closed. An entry can be corrected with a reason; the old one stays in the record.</source>
        <translation>Esta visita está cerrada. Una anotación se puede corregir con un motivo; la antigua queda en el registro.</translation>
    </message>
    <message>
        <source>What changed</source>
        <translation>Qué ha cambiado</translation>
    </message>
    <message>
        <source>Done correcting</source>
        <translation>Corrección terminada</translation>
    </message>
    <message>
        <source>Zones seen for the first time: %1.</source>
        <translation>Zonas vistas por primera vez: %1.</translation>
    </message>
    <message>
        <source>Zones the same as before: %1.</source>
        <translation>Zonas igual que antes: %1.</translation>
    </message>
    <message>
        <source>Readings taken: %1.</source>
        <translation>Lecturas tomadas: %1.</translation>
    </message>
    <message>
        <source>Work done: %1.</source>
        <translation>Trabajo realizado: %1.</translation>
    </message>
    <message>
        <source>Refrigerant entries: %1.</source>
        <translation>Anotaciones de refrigerante: %1.</translation>
    </message>
    <message>
        <source>Nothing has been entered yet.</source>
        <translation>Todavía no se ha anotado nada.</translation>
    </message>
    <message>
        <source>Every zone was looked at.</source>
        <translation>Se miraron todas las zonas.</translation>
    </message>
    <message>
        <source>Not looked at yet (%1):</source>
        <translation>Aún sin mirar (%1):</translation>
    </message>
    <message>
        <source>Not looked at (%1):</source>
        <translation>Sin mirar (%1):</translation>
    </message>
    <message>
        <source>Not entered yet: %1. Enter or clear it first, so that nothing is lost.</source>
        <translation>Aún sin anotar: %1. Anótelo o bórrelo antes, para que no se pierda nada.</translation>
    </message>
    <message>
        <source>Zones not looked at: %1. Once closed, entries can no longer be undone, only corrected with a reason. Close it?</source>
        <translation>Zonas sin mirar: %1. Una vez cerrada, las anotaciones ya no se pueden deshacer, solo corregir con un motivo. ¿Cerrarla?</translation>
    </message>
    <message>
        <source>Once closed, entries can no longer be undone, only corrected with a reason. Close it?</source>
        <translation>Una vez cerrada, las anotaciones ya no se pueden deshacer, solo corregir con un motivo. ¿Cerrarla?</translation>
    </message>
    <message>
        <source>What that does to the outlook</source>
        <translation>Qué cambia en la previsión</translation>
    </message>
</context>
<context>
    <name>padside::CoatPanel</name>
    <message>
        <source>Keep off until then</source>
        <translation>Mantener apagada hasta entonces</translation>
    </message>
    <message>
        <source>Look it over later</source>
        <translation>Revisarlo más adelante</translation>
    </message>
    <message>
        <source>Temperature of the surface</source>
        <translation>Temperatura de la superficie</translation>
    </message>
    <message>
        <source>Temperature of the air</source>
        <translation>Temperatura del aire</translation>
    </message>
    <message>
        <source>Relative humidity of the air</source>
        <translation>Humedad relativa del aire</translation>
    </message>
    <message>
        <source>Hours to dry on the data sheet</source>
        <translation>Horas de secado de la ficha técnica</translation>
    </message>
    <message>
        <source>Temperature the data sheet gives them for</source>
        <translation>Temperatura a la que las da la ficha técnica</translation>
    </message>
    <message>
        <source>Kind of coating</source>
        <translation>Tipo de revestimiento</translation>
    </message>
    <message>
        <source>another: see its data sheet</source>
        <translation>otro: vea su ficha técnica</translation>
    </message>
    <message>
        <source>When the unit runs again</source>
        <translation>Cuándo vuelve a funcionar la unidad</translation>
    </message>
    <message>
        <source>not known</source>
        <translation>no se sabe</translation>
    </message>
    <message>
        <source>off until put on again</source>
        <translation>apagada hasta que se encienda</translation>
    </message>
    <message>
        <source>at these hours:</source>
        <translation>a estas horas:</translation>
    </message>
    <message>
        <source>Hours at which the unit usually runs</source>
        <translation>Horas a las que suele funcionar la unidad</translation>
    </message>
    <message>
        <source>Goes to “Look again” below with the reason written in</source>
        <translation>Va a «Volver a mirar», abajo, con el motivo escrito</translation>
    </message>
    <message>
        <source>Kind</source>
        <translation>Tipo</translation>
    </message>
    <message>
        <source>Surface</source>
        <translation>Superficie</translation>
    </message>
    <message>
        <source>Data sheet</source>
        <translation>Ficha</translation>
    </message>
    <message>
        <source>Unit runs</source>
        <translation>En marcha</translation>
    </message>
    <message>
        <source>Lock the power off first. Solvents harm lungs and burn. A pitted vessel is under pressure: while charged, no brush to metal. The data sheet comes first.</source>
        <translation>Primero corte y bloquee la corriente. Los disolventes dañan los pulmones y arden. Un recipiente picado está a presión: con carga, no cepille hasta el metal. Manda la ficha técnica.</translation>
    </message>
    <message>
        <source>It may be coated now.</source>
        <translation>Se puede pintar ahora.</translation>
    </message>
    <message>
        <source>It may be coated now, on these terms:</source>
        <translation>Se puede pintar ahora, con estas condiciones:</translation>
    </message>
    <message>
        <source>Not to be coated now:</source>
        <translation>No pintar ahora:</translation>
    </message>
    <message>
        <source>Dry in %1 h at %2 (twice as long for each 10 K colder: common practice, no source): keep it off and dry until %3.</source>
        <translation>Seco en %1 h a %2 (el doble por cada 10 K menos: práctica común, sin fuente): mantener apagada y seca hasta %3.</translation>
    </message>
    <message>
        <source>May it be coated now? Type the temperature of the surface, of the air, and its humidity.</source>
        <translation>¿Se puede pintar ahora? Escriba la temperatura de la superficie, la del aire y su humedad.</translation>
    </message>
    <message>
        <source>Air, humidity</source>
        <translation>Aire, humedad</translation>
    </message>
</context>
<context>
    <name>padside::ColumnChoices</name>
    <message>
        <source>Column for: %1</source>
        <translation>Columna para: %1</translation>
    </message>
    <message>
        <source>– none –</source>
        <translation>– ninguna –</translation>
    </message>
</context>
<context>
    <name>padside::ConditionsBar</name>
    <message>
        <source>Reason of the visit</source>
        <translation>Motivo de la visita</translation>
    </message>
    <message>
        <source>Sky</source>
        <translation>Cielo</translation>
    </message>
    <message>
        <source>Running state of the unit</source>
        <translation>Estado de marcha de la unidad</translation>
    </message>
    <message>
        <source>Technician</source>
        <translation>Técnico</translation>
    </message>
    <message>
        <source>Air temperature</source>
        <translation>Temperatura del aire</translation>
    </message>
    <message>
        <source>Relative humidity</source>
        <translation>Humedad relativa</translation>
    </message>
    <message>
        <source>Back to the unit</source>
        <translation>Volver a la unidad</translation>
    </message>
    <message>
        <source>Reason</source>
        <translation>Motivo</translation>
    </message>
    <message>
        <source>Air</source>
        <translation>Aire</translation>
    </message>
    <message>
        <source>Humidity</source>
        <translation>Humedad</translation>
    </message>
    <message>
        <source>Unit is</source>
        <translation>Unidad</translation>
    </message>
    <message>
        <source>%1 at %2</source>
        <translation>%1 en %2</translation>
    </message>
    <message>
        <source>%1, closed</source>
        <translation>%1, cerrada</translation>
    </message>
    <message>
        <source>%1 “%2”</source>
        <translation>%1 «%2»</translation>
    </message>
</context>
<context>
    <name>padside::CutawayView</name>
    <message>
        <source>Drawing of the opened unit</source>
        <translation>Dibujo de la unidad abierta</translation>
    </message>
    <message>
        <source>Point at a part, or walk there with the arrow keys, to read what was last found of it.</source>
        <translation>Señale una pieza, o llegue a ella con las flechas, para leer lo último que se halló en ella.</translation>
    </message>
</context>
<context>
    <name>padside::CutawayWords</name>
    <message>
        <source>%1 %2</source>
        <comment>numeral and word of a grade</comment>
        <translation>%1 %2</translation>
    </message>
    <message>
        <source>%1, %2</source>
        <comment>part, position</comment>
        <translation>%1, %2</translation>
    </message>
    <message>
        <source>%1, %2</source>
        <comment>part, zone</comment>
        <translation>%1, %2</translation>
    </message>
    <message>
        <source>spring %1</source>
        <translation>primavera %1</translation>
    </message>
    <message>
        <source>fall %1</source>
        <translation>otoño %1</translation>
    </message>
    <message>
        <source>%1: not seen on %2 (%3).</source>
        <translation>%1: sin ver el %2 (%3).</translation>
    </message>
    <message>
        <source>%1: nothing recorded yet.</source>
        <translation>%1: nada anotado todavía.</translation>
    </message>
    <message>
        <source>%1: %2 on %3</source>
        <translation>%1: %2 el %3</translation>
    </message>
    <message>
        <source>worse by one since %1</source>
        <translation>un grado peor desde el %1</translation>
    </message>
    <message>
        <source>worse by %1 since %2</source>
        <translation>%1 grados peor desde el %2</translation>
    </message>
    <message>
        <source>better by one since %1</source>
        <translation>un grado mejor desde el %1</translation>
    </message>
    <message>
        <source>better by %1 since %2</source>
        <translation>%1 grados mejor desde el %2</translation>
    </message>
    <message>
        <source>left as %1</source>
        <translation>se dejó en %1</translation>
    </message>
    <message>
        <source>not seen since</source>
        <translation>sin ver desde entonces</translation>
    </message>
    <message>
        <source>not seen since (%1)</source>
        <translation>sin ver desde entonces (%1)</translation>
    </message>
    <message>
        <source>%1.</source>
        <comment>ends a sentence</comment>
        <translation>%1.</translation>
    </message>
    <message>
        <source>%1 of %2 zones looked at</source>
        <translation>miradas %1 de %2 zonas</translation>
    </message>
    <message>
        <source>%1: %2 at this visit; %3.</source>
        <translation>%1: %2 en esta visita; %3.</translation>
    </message>
    <message>
        <source>%1: not seen at this visit (%2); %3.</source>
        <translation>%1: sin ver en esta visita (%2); %3.</translation>
    </message>
    <message>
        <source>%1: not looked at yet at this visit.</source>
        <translation>%1: aún sin mirar en esta visita.</translation>
    </message>
</context>
<context>
    <name>padside::EditMenu</name>
    <message>
        <source>&amp;Edit</source>
        <translation>E&amp;dición</translation>
    </message>
    <message>
        <source>&amp;Undo</source>
        <translation>&amp;Deshacer</translation>
    </message>
    <message>
        <source>&amp;Redo</source>
        <translation>&amp;Rehacer</translation>
    </message>
    <message>
        <source>&amp;Undo: the visit is closed, correct it with a reason</source>
        <translation>&amp;Deshacer: la visita está cerrada, corríjala con un motivo</translation>
    </message>
    <message>
        <source>&amp;Undo %1</source>
        <translation>&amp;Deshacer: %1</translation>
    </message>
    <message>
        <source>&amp;Redo %1</source>
        <translation>&amp;Rehacer: %1</translation>
    </message>
</context>
<context>
    <name>padside::EntryLines</name>
    <message>
        <source>Take back</source>
        <translation>Retirar</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>Correct</source>
        <translation>Corregir</translation>
    </message>
</context>
<context>
    <name>padside::FindingTreeModel</name>
    <message>
        <source>same</source>
        <translation>igual</translation>
    </message>
    <message>
        <source>%1 worse</source>
        <translation>%1 peor</translation>
    </message>
    <message>
        <source>%1 better</source>
        <translation>%1 mejor</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <comment>date, note</comment>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>%1, %2</source>
        <comment>part, position</comment>
        <translation>%1, %2</translation>
    </message>
    <message>
        <source>fitted %1</source>
        <translation>montada el %1</translation>
    </message>
    <message>
        <source>never looked at</source>
        <translation>nunca mirada</translation>
    </message>
    <message numerus="yes">
        <source>%n times since %1</source>
        <translation>
            <numerusform>%n vez desde el %1</numerusform>
            <numerusform>%n veces desde el %1</numerusform>
        </translation>
    </message>
    <message>
        <source>on %1</source>
        <translation>el %1</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <comment>since when, reason</comment>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>%1, %2</source>
        <comment>part, zone</comment>
        <translation>%1, %2</translation>
    </message>
    <message>
        <source>%1 %2 since %3</source>
        <comment>numeral, word, date</comment>
        <translation>%1 %2 desde el %3</translation>
    </message>
    <message>
        <source>not seen %1</source>
        <translation>sin ver %1</translation>
    </message>
    <message>
        <source>%1, worst grade %2</source>
        <translation>%1, peor grado %2</translation>
    </message>
    <message>
        <source>Part and zone</source>
        <translation>Pieza y zona</translation>
    </message>
    <message>
        <source>Grade</source>
        <translation>Grado</translation>
    </message>
    <message>
        <source>Since</source>
        <translation>Desde</translation>
    </message>
    <message>
        <source>Change</source>
        <translation>Cambio</translation>
    </message>
    <message>
        <source>Wet or dry</source>
        <translation>Seco o mojado</translation>
    </message>
    <message>
        <source>Not seen</source>
        <translation>Sin ver</translation>
    </message>
    <message>
        <source>Last note</source>
        <translation>Última nota</translation>
    </message>
</context>
<context>
    <name>padside::FindingView</name>
    <message>
        <source>No parts have been written down for this unit.</source>
        <translation>No se ha anotado ninguna pieza de esta unidad.</translation>
    </message>
</context>
<context>
    <name>padside::FittedPartsList</name>
    <message>
        <source>Parts it has</source>
        <translation>Piezas que tiene</translation>
    </message>
    <message>
        <source>Its kind brings the usual parts.</source>
        <translation>Su clase trae las piezas habituales.</translation>
    </message>
    <message>
        <source>%1 (%2)</source>
        <translation>%1 (%2)</translation>
    </message>
</context>
<context>
    <name>padside::FlagActions</name>
    <message>
        <source>Ac&amp;knowledge…</source>
        <translation>Dar por &amp;visto…</translation>
    </message>
    <message>
        <source>Ta&amp;ke back</source>
        <translation>Retirar el &amp;visto</translation>
    </message>
    <message>
        <source>The flag stands again (A)</source>
        <translation>El aviso vuelve a valer (A)</translation>
    </message>
    <message>
        <source>Say why the chosen flag may stand as it is (A)</source>
        <translation>Decir por qué el aviso elegido puede quedar como está (A)</translation>
    </message>
</context>
<context>
    <name>padside::FleetField</name>
    <message>
        <source>%1 (%2)</source>
        <comment>part, position</comment>
        <translation>%1 (%2)</translation>
    </message>
    <message>
        <source>%1, %2: %3 is spent by %4 with a chance of %5.</source>
        <comment>unit, site, part, date, chance</comment>
        <translation>%1, %2: %3 estará agotado el %4 con una probabilidad de %5.</translation>
    </message>
    <message>
        <source>Its worst grade is %1 %2.</source>
        <comment>numeral, word</comment>
        <translation>Su peor grado es %1 %2.</translation>
    </message>
    <message>
        <source>It was never seen.</source>
        <translation>Nunca se vio.</translation>
    </message>
    <message>
        <source>At stake: %1.</source>
        <translation>En juego: %1.</translation>
    </message>
    <message>
        <source>What leads is %1.</source>
        <translation>Lo que manda es %1.</translation>
    </message>
    <message>
        <source>By then the unit stops with a chance of %1.</source>
        <translation>Para entonces la unidad se para con una probabilidad de %1.</translation>
    </message>
    <message>
        <source>Nothing of this unit was seen yet: only the usual lives of its parts speak here.</source>
        <translation>De esta unidad no se ha visto nada todavía: aquí solo habla la vida habitual de sus piezas.</translation>
    </message>
</context>
<context>
    <name>padside::FleetFieldView</name>
    <message>
        <source>Field of units: worse to the right, likelier above</source>
        <translation>Campo de unidades: peor a la derecha, más probable arriba</translation>
    </message>
    <message numerus="yes">
        <source>%n units gathered</source>
        <translation>
            <numerusform>%n unidad reunida</numerusform>
            <numerusform>%n unidades reunidas</numerusform>
        </translation>
    </message>
    <message>
        <source>%1 and %2 more</source>
        <comment>tags, count</comment>
        <translation>%1 y %2 más</translation>
    </message>
    <message>
        <source>%1: %2. Space or a click steps through them.</source>
        <comment>how many, tags</comment>
        <translation>%1: %2. Espacio o un clic las recorre una a una.</translation>
    </message>
    <message>
        <source>No unit shown has an outlook yet.</source>
        <translation>Ninguna unidad mostrada tiene todavía previsión.</translation>
    </message>
    <message>
        <source>Worse to the right, likelier above. Point at a unit, or walk there with the arrow keys, to read why.</source>
        <translation>Peor a la derecha, más probable arriba. Señale una unidad, o vaya a ella con las flechas, para leer por qué.</translation>
    </message>
</context>
<context>
    <name>padside::FleetModel</name>
    <message>
        <source>worst grade %1</source>
        <translation>peor grado %1</translation>
    </message>
    <message>
        <source>nothing seen yet</source>
        <translation>nada visto aún</translation>
    </message>
    <message>
        <source>not reviewed yet</source>
        <translation>aún sin revisar</translation>
    </message>
    <message>
        <source>one flag</source>
        <translation>un aviso</translation>
    </message>
    <message numerus="yes">
        <source>%n flags</source>
        <translation>
            <numerusform>%n aviso</numerusform>
            <numerusform>%n avisos</numerusform>
        </translation>
    </message>
    <message>
        <source>retired · %1</source>
        <translation>retirada · %1</translation>
    </message>
    <message>
        <source>never</source>
        <translation>nunca</translation>
    </message>
    <message>
        <source>overdue since %1</source>
        <translation>vencida desde el %1</translation>
    </message>
    <message>
        <source>by %1</source>
        <translation>antes del %1</translation>
    </message>
    <message>
        <source>Unit</source>
        <translation>Unidad</translation>
    </message>
    <message>
        <source>Site</source>
        <translation>Emplazamiento</translation>
    </message>
    <message>
        <source>Place</source>
        <translation>Lugar</translation>
    </message>
    <message>
        <source>Kind</source>
        <translation>Tipo</translation>
    </message>
    <message>
        <source>Years</source>
        <translation>Años</translation>
    </message>
    <message>
        <source>Worst</source>
        <translation>Peor</translation>
    </message>
    <message>
        <source>Flags</source>
        <translation>Avisos</translation>
    </message>
    <message>
        <source>Gravest flag</source>
        <translation>Aviso más grave</translation>
    </message>
    <message>
        <source>Last visit</source>
        <translation>Última visita</translation>
    </message>
    <message>
        <source>Next check</source>
        <translation>Próxima revisión</translation>
    </message>
    <message>
        <source>; acknowledged and not counted: %1</source>
        <translation>; vistos y no contados: %1</translation>
    </message>
    <message>
        <source>Flags that stand; acknowledged ones are not counted</source>
        <translation>Avisos que valen; los dados por vistos no se cuentan</translation>
    </message>
</context>
<context>
    <name>padside::FleetPage</name>
    <message>
        <source>Units reviewed</source>
        <translation>Unidades revisadas</translation>
    </message>
    <message>
        <source>Enter or a double click opens a unit · Alt+↑ and Alt+↓ put the units in the order of the column you are in, as a click on its heading does</source>
        <translation>Intro o doble clic abre una unidad · Alt+↑ y Alt+↓ ordenan las unidades por la columna en la que está, como un clic en su título</translation>
    </message>
    <message>
        <source>Units of the fleet</source>
        <translation>Unidades del parque</translation>
    </message>
    <message>
        <source>Flags and checks: %1 of %2 units reviewed.</source>
        <translation>Avisos y revisiones: %1 de %2 unidades revisadas.</translation>
    </message>
    <message>
        <source>Stopped: flags and checks of %1 of %2 units are known.</source>
        <translation>Detenido: se conocen los avisos y revisiones de %1 de %2 unidades.</translation>
    </message>
    <message>
        <source>&amp;Stop</source>
        <translation>&amp;Detener</translation>
    </message>
    <message>
        <source>&amp;Go on</source>
        <translation>&amp;Seguir</translation>
    </message>
    <message>
        <source>One unit.</source>
        <translation>Una unidad.</translation>
    </message>
    <message numerus="yes">
        <source>%n units.</source>
        <translation>
            <numerusform>%n unidad.</numerusform>
            <numerusform>%n unidades.</numerusform>
        </translation>
    </message>
    <message>
        <source>%1 of %2 units are shown.</source>
        <translation>Se muestran %1 de %2 unidades.</translation>
    </message>
    <message>
        <source>Could not be read: %1 (%2).</source>
        <translation>No se pudo leer: %1 (%2).</translation>
    </message>
    <message numerus="yes">
        <source>And %n more.</source>
        <translation>
            <numerusform>Y %n más.</numerusform>
            <numerusform>Y %n más.</numerusform>
        </translation>
    </message>
    <message>
        <source>&lt;h3&gt;This file has no units yet.&lt;/h3&gt;&lt;p&gt;They will stand here, the gravest first.&lt;/p&gt;</source>
        <translation>&lt;h3&gt;Este archivo aún no tiene unidades.&lt;/h3&gt;&lt;p&gt;Aparecerán aquí, las más graves primero.&lt;/p&gt;</translation>
    </message>
    <message>
        <source>&lt;h3&gt;No unit is like that.&lt;/h3&gt;&lt;p&gt;Ask for less, or choose &lt;i&gt;Show all&lt;/i&gt;. Retired units are shown when you ask for them.&lt;/p&gt;</source>
        <translation>&lt;h3&gt;Ninguna unidad es así.&lt;/h3&gt;&lt;p&gt;Pida menos o elija &lt;i&gt;Mostrar todas&lt;/i&gt;. Las unidades retiradas se muestran cuando las pide.&lt;/p&gt;</translation>
    </message>
    <message>
        <source>The time looked at</source>
        <translation>El plazo mirado</translation>
    </message>
    <message>
        <source>before the next visit</source>
        <translation>antes de la próxima visita</translation>
    </message>
    <message>
        <source>within a year</source>
        <translation>en un año</translation>
    </message>
    <message>
        <source>within two years</source>
        <translation>en dos años</translation>
    </message>
    <message>
        <source>within five years</source>
        <translation>en cinco años</translation>
    </message>
    <message>
        <source>&amp;Chance of failing</source>
        <translation>&amp;Probabilidad de fallo</translation>
    </message>
</context>
<context>
    <name>padside::FleetWishes</name>
    <message>
        <source>With f&amp;lags</source>
        <translation>Con a&amp;visos</translation>
    </message>
    <message>
        <source>&amp;Overdue</source>
        <translation>V&amp;encidas</translation>
    </message>
    <message>
        <source>&amp;Retired too</source>
        <translation>También &amp;retiradas</translation>
    </message>
    <message>
        <source>Show &amp;all</source>
        <translation>Mostrar &amp;todas</translation>
    </message>
    <message>
        <source>Tag, site, place or kind</source>
        <translation>Etiqueta, lugar, tipo…</translation>
    </message>
    <message>
        <source>Find units by tag, site, place or kind</source>
        <translation>Buscar unidades por etiqueta, emplazamiento, lugar o tipo</translation>
    </message>
    <message>
        <source>Site</source>
        <translation>Emplazamiento</translation>
    </message>
    <message>
        <source>All sites</source>
        <translation>Todo emplazamiento</translation>
    </message>
    <message>
        <source>Kind of unit</source>
        <translation>Tipo de unidad</translation>
    </message>
    <message>
        <source>All kinds</source>
        <translation>Todos los tipos</translation>
    </message>
    <message>
        <source>Worst grade at least</source>
        <translation>Peor grado, como mínimo</translation>
    </message>
    <message>
        <source>Any grade</source>
        <translation>Cualquier grado</translation>
    </message>
    <message>
        <source>Grade 5</source>
        <translation>Grado 5</translation>
    </message>
    <message>
        <source>Grade %1 or worse</source>
        <translation>Grado %1 o peor</translation>
    </message>
    <message>
        <source>Only units with flags</source>
        <translation>Solo unidades con avisos</translation>
    </message>
    <message>
        <source>Only units with an overdue check</source>
        <translation>Solo unidades con una revisión vencida</translation>
    </message>
    <message>
        <source>Retired units too</source>
        <translation>También unidades retiradas</translation>
    </message>
    <message>
        <source>Show all units that are not retired</source>
        <translation>Mostrar todas las unidades no retiradas</translation>
    </message>
</context>
<context>
    <name>padside::FollowUpPanel</name>
    <message>
        <source>Why to look again</source>
        <translation>Por qué volver a mirar</translation>
    </message>
    <message>
        <source>Look again from</source>
        <translation>Volver a mirar desde</translation>
    </message>
    <message>
        <source>Look again until</source>
        <translation>Volver a mirar hasta</translation>
    </message>
    <message>
        <source>Promise to look again</source>
        <translation>Prometer volver a mirar</translation>
    </message>
    <message>
        <source>like: bottom was wet, see it dry</source>
        <translation>p. ej.: el fondo estaba mojado, verlo seco</translation>
    </message>
    <message>
        <source>Why</source>
        <translation>Por qué</translation>
    </message>
    <message>
        <source>From</source>
        <translation>Desde</translation>
    </message>
    <message>
        <source>Until</source>
        <translation>Hasta</translation>
    </message>
    <message>
        <source>Look again</source>
        <translation>Volver a mirar</translation>
    </message>
    <message>
        <source>A promise for this zone, beside the checks that are worked out.</source>
        <translation>Una promesa para esta zona, además de las revisiones calculadas.</translation>
    </message>
    <message>
        <source>%1 to %2: %3</source>
        <translation>del %1 al %2: %3</translation>
    </message>
    <message>
        <source>Say why it should be looked at again.</source>
        <translation>Diga por qué hay que volver a mirarla.</translation>
    </message>
    <message>
        <source>The last day to look again is before the first. Change one of them.</source>
        <translation>El último día para volver a mirar es anterior al primero. Cambie uno de los dos.</translation>
    </message>
</context>
<context>
    <name>padside::GradeButton</name>
    <message>
        <source>last time</source>
        <translation>última vez</translation>
    </message>
</context>
<context>
    <name>padside::GradeChoice</name>
    <message>
        <source>Not seen, because …</source>
        <translation>Sin ver, porque …</translation>
    </message>
    <message>
        <source>Not seen: %1</source>
        <translation>Sin ver: %1</translation>
    </message>
    <message>
        <source>Esc   back to the grades</source>
        <translation>Esc   volver a los grados</translation>
    </message>
    <message>
        <source>Back to the grades</source>
        <translation>Volver a los grados</translation>
    </message>
    <message>
        <source>Not seen</source>
        <translation>Sin ver</translation>
    </message>
    <message>
        <source>N, then the number of the reason</source>
        <translation>N, y luego el número del motivo</translation>
    </message>
</context>
<context>
    <name>padside::HistoryPanel</name>
    <message>
        <source>&amp;Print timeline</source>
        <translation>&amp;Imprimir línea de tiempo</translation>
    </message>
    <message>
        <source>The timeline on paper, to be printed or exported as PDF</source>
        <translation>La línea de tiempo en papel, para imprimir o exportar como PDF</translation>
    </message>
    <message>
        <source>%1, %2</source>
        <comment>part, zone</comment>
        <translation>%1, %2</translation>
    </message>
    <message>
        <source>Owne&amp;r&apos;s history</source>
        <translation>Historial del p&amp;ropietario</translation>
    </message>
    <message>
        <source>What the owner should know of this unit, to be printed or exported as PDF</source>
        <translation>Lo que el propietario debería saber de esta unidad, para imprimir o exportar como PDF</translation>
    </message>
</context>
<context>
    <name>padside::HistoryPaper</name>
    <message>
        <source>serial %1</source>
        <translation>n.º de serie %1</translation>
    </message>
    <message>
        <source>installed %1</source>
        <translation>instalada el %1</translation>
    </message>
    <message>
        <source>visits: %1</source>
        <translation>visitas: %1</translation>
    </message>
    <message>
        <source>%1, history %2 to %3</source>
        <translation>%1, historial del %2 al %3</translation>
    </message>
    <message>
        <source>%1, %2: history</source>
        <comment>tag, site</comment>
        <translation>%1, %2: historial</translation>
    </message>
    <message>
        <source>As of %1. Padside</source>
        <translation>A fecha de %1. Padside</translation>
    </message>
    <message>
        <source>%1 history</source>
        <translation>%1 historial</translation>
    </message>
</context>
<context>
    <name>padside::HorizonModel</name>
    <message>
        <source>%1 %</source>
        <translation>%1 %</translation>
    </message>
    <message>
        <source>Spent within</source>
        <translation>Agotado en</translation>
    </message>
    <message>
        <source>Settled</source>
        <translation>Resueltos</translation>
    </message>
    <message>
        <source>Zones</source>
        <translation>Zonas</translation>
    </message>
    <message>
        <source>Found spent</source>
        <translation>Hallados agotados</translation>
    </message>
    <message>
        <source>Expected</source>
        <translation>Esperados</translation>
    </message>
    <message>
        <source>Waiting</source>
        <translation>En espera</translation>
    </message>
    <message>
        <source>Never settled</source>
        <translation>Sin resolver nunca</translation>
    </message>
    <message>
        <source>How far ahead it was said, from the day of the visit</source>
        <translation>Con cuánta antelación se dijo, desde el día de la visita</translation>
    </message>
    <message>
        <source>Forecasts whose day is past and that a later visit has settled</source>
        <translation>Pronósticos cuyo día ya pasó y que una visita posterior ha resuelto</translation>
    </message>
    <message>
        <source>So many zones they are about</source>
        <translation>De cuántas zonas tratan</translation>
    </message>
    <message>
        <source>Of those settled</source>
        <translation>De los resueltos</translation>
    </message>
    <message>
        <source>The sum of the chances of those settled</source>
        <translation>La suma de las probabilidades de los resueltos</translation>
    </message>
    <message>
        <source>Mean square of the chance said less what came; 0 is best</source>
        <translation>Media del cuadrado de la probabilidad dicha menos lo ocurrido; 0 es lo mejor</translation>
    </message>
    <message>
        <source>The Brier score of always saying the share that was found spent</source>
        <translation>La puntuación de Brier de decir siempre la proporción que se encontró agotada</translation>
    </message>
    <message>
        <source>How much better the Brier score is than that of the share; below 0 it is worse</source>
        <translation>Cuánto mejor es la puntuación de Brier que la de la proporción; bajo 0 es peor</translation>
    </message>
    <message>
        <source>Mean of minus the logarithm of the chance given to what came; 0 is best</source>
        <translation>Media de menos el logaritmo de la probabilidad dada a lo ocurrido; 0 es lo mejor</translation>
    </message>
    <message>
        <source>The log score of always saying the share that was found spent</source>
        <translation>La puntuación logarítmica de decir siempre la proporción que se encontró agotada</translation>
    </message>
    <message>
        <source>How much better the log score is than that of the share; below 0 it is worse</source>
        <translation>Cuánto mejor es la puntuación logarítmica que la de la proporción; bajo 0 es peor</translation>
    </message>
    <message>
        <source>Their day is to come, or nobody has looked since</source>
        <translation>Su día está por venir, o nadie ha mirado desde entonces</translation>
    </message>
    <message>
        <source>Replaced, made good, cleaned or retired in time, or the day lies between two visits that found it otherwise</source>
        <translation>Sustituido, reparado, limpiado o retirado a tiempo, o el día cae entre dos visitas que lo encontraron distinto</translation>
    </message>
    <message>
        <source>far worse</source>
        <translation>mucho peor</translation>
    </message>
    <message>
        <source>Brier score</source>
        <translation>Brier</translation>
    </message>
    <message>
        <source>of the share</source>
        <translation>de la proporción</translation>
    </message>
    <message>
        <source>better by</source>
        <translation>mejor en</translation>
    </message>
    <message>
        <source>Log score</source>
        <translation>Logarítmica</translation>
    </message>
</context>
<context>
    <name>padside::ImportDialog</name>
    <message>
        <source>No list is chosen. Its first line names the columns; a tag and a kind are needed, everything else may be missing. A file can also be dropped here.</source>
        <translation>No hay lista elegida. Su primera línea nombra las columnas; hacen falta etiqueta y clase, todo lo demás puede faltar. También se puede soltar aquí un archivo.</translation>
    </message>
    <message>
        <source>&amp;Choose a list…</source>
        <translation>&amp;Elegir una lista…</translation>
    </message>
    <message>
        <source>Show only the &amp;rows that are skipped</source>
        <translation>Mostrar solo las &amp;filas que se omiten</translation>
    </message>
    <message>
        <source>&amp;Add</source>
        <translation>&amp;Añadir</translation>
    </message>
    <message>
        <source>Close</source>
        <translation>Cerrar</translation>
    </message>
    <message>
        <source>Units from a list</source>
        <translation>Unidades de una lista</translation>
    </message>
    <message>
        <source>Which column holds what</source>
        <translation>Qué contiene cada columna</translation>
    </message>
    <message>
        <source>&amp;Site of rows that name none</source>
        <translation>E&amp;mplazamiento de las filas que no lo nombran</translation>
    </message>
    <message>
        <source>Site of rows that name none</source>
        <translation>Emplazamiento de las filas que no lo nombran</translation>
    </message>
    <message>
        <source>Rows of the list and what will be made of them</source>
        <translation>Filas de la lista y lo que se hará de ellas</translation>
    </message>
    <message>
        <source>Stopped; nothing was added.</source>
        <translation>Detenido; no se añadió nada.</translation>
    </message>
    <message>
        <source>Choose a list of units</source>
        <translation>Elegir una lista de unidades</translation>
    </message>
    <message>
        <source>Lists (*.csv);;All files (*)</source>
        <translation>Listas (*.csv);;Todos los archivos (*)</translation>
    </message>
    <message>
        <source>There is no row that can be added.</source>
        <translation>No hay ninguna fila que se pueda añadir.</translation>
    </message>
    <message>
        <source>One unit will be added.</source>
        <translation>Se añadirá una unidad.</translation>
    </message>
    <message numerus="yes">
        <source>%n units will be added, all together or, if something fails, not at all.</source>
        <translation>
            <numerusform>Se añadirá %n unidad.</numerusform>
            <numerusform>Se añadirán %n unidades, todas juntas o, si algo falla, ninguna.</numerusform>
        </translation>
    </message>
    <message>
        <source>One row is skipped.</source>
        <translation>Se omite una fila.</translation>
    </message>
    <message numerus="yes">
        <source>%n rows are skipped.</source>
        <translation>
            <numerusform>Se omite %n fila.</numerusform>
            <numerusform>Se omiten %n filas.</numerusform>
        </translation>
    </message>
    <message>
        <source>So many can&apos;t be undone in one step: back the file up first if you are not sure.</source>
        <translation>Tantas no se pueden deshacer de una vez: si no está seguro, haga antes una copia de seguridad del archivo.</translation>
    </message>
    <message>
        <source>&amp;Add one unit</source>
        <translation>&amp;Añadir una unidad</translation>
    </message>
    <message numerus="yes">
        <source>&amp;Add %n units</source>
        <translation>
            <numerusform>&amp;Añadir %n unidad</numerusform>
            <numerusform>&amp;Añadir %n unidades</numerusform>
        </translation>
    </message>
    <message>
        <source>Stop</source>
        <translation>Detener</translation>
    </message>
</context>
<context>
    <name>padside::KeySheet</name>
    <message>
        <source>The zone at hand</source>
        <translation>La zona presente</translation>
    </message>
    <message>
        <source>1 – 5</source>
        <translation>1 – 5</translation>
    </message>
    <message>
        <source>give the grade</source>
        <translation>dar el grado</translation>
    </message>
    <message>
        <source>N, then 1 – 7</source>
        <translation>N, luego 1 – 7</translation>
    </message>
    <message>
        <source>not seen, and why</source>
        <translation>sin ver, y por qué</translation>
    </message>
    <message>
        <source>D  M  W</source>
        <translation>S  H  M</translation>
    </message>
    <message>
        <source>dry, damp, wet to the touch</source>
        <translation>seco, húmedo, mojado al tacto</translation>
    </message>
    <message>
        <source>S</source>
        <translation>I</translation>
    </message>
    <message>
        <source>same grade as last time; it is shown on the button</source>
        <translation>el mismo grado que la última vez; está en el botón</translation>
    </message>
    <message>
        <source>T, then Esc</source>
        <translation>T, luego Esc</translation>
    </message>
    <message>
        <source>write a note, back to the zone</source>
        <translation>escribir una nota, volver a la zona</translation>
    </message>
    <message>
        <source>P  Ctrl+V</source>
        <translation>F  Ctrl+V</translation>
    </message>
    <message>
        <source>add a photo from a file, from the clipboard</source>
        <translation>añadir una foto de un archivo, del portapapeles</translation>
    </message>
    <message>
        <source>L</source>
        <translation>D</translation>
    </message>
    <message>
        <source>as found or as left, once there was work</source>
        <translation>al llegar o al irse, cuando hubo trabajo</translation>
    </message>
    <message>
        <source>C</source>
        <translation>P</translation>
    </message>
    <message>
        <source>all the cautions</source>
        <translation>todas las precauciones</translation>
    </message>
    <message>
        <source>From zone to zone</source>
        <translation>De zona en zona</translation>
    </message>
    <message>
        <source>Enter  ↓  Space</source>
        <translation>Intro  ↓  Espacio</translation>
    </message>
    <message>
        <source>next zone</source>
        <translation>zona siguiente</translation>
    </message>
    <message>
        <source>↑</source>
        <translation>↑</translation>
    </message>
    <message>
        <source>zone before</source>
        <translation>zona anterior</translation>
    </message>
    <message>
        <source>O</source>
        <translation>O</translation>
    </message>
    <message>
        <source>next zone not looked at yet</source>
        <translation>próxima zona aún sin mirar</translation>
    </message>
    <message>
        <source>The other parts of a visit</source>
        <translation>Las otras partes de una visita</translation>
    </message>
    <message>
        <source>F2  Esc</source>
        <translation>F2  Esc</translation>
    </message>
    <message>
        <source>back to the zone</source>
        <translation>volver a la zona</translation>
    </message>
    <message>
        <source>F3</source>
        <translation>F3</translation>
    </message>
    <message>
        <source>readings; Enter goes to the next</source>
        <translation>lecturas; Intro pasa a la siguiente</translation>
    </message>
    <message>
        <source>F4</source>
        <translation>F4</translation>
    </message>
    <message>
        <source>work; 1 – 6 chooses its kind, Enter enters it</source>
        <translation>trabajo; 1 – 6 elige su clase, Intro lo anota</translation>
    </message>
    <message>
        <source>F5</source>
        <translation>F5</translation>
    </message>
    <message>
        <source>refrigerant; 1 – 3 chooses added, recovered, lost</source>
        <translation>carga; 1 – 3 elige añadido, recuperado, perdido</translation>
    </message>
    <message>
        <source>F6</source>
        <translation>F6</translation>
    </message>
    <message>
        <source>finish; Enter closes, Enter again agrees</source>
        <translation>cierre; Intro cierra, otra vez Intro lo confirma</translation>
    </message>
    <message>
        <source>Everywhere</source>
        <translation>En todas partes</translation>
    </message>
    <message>
        <source>Ctrl+Z</source>
        <translation>Ctrl+Z</translation>
    </message>
    <message>
        <source>take back what was done last, of an open visit or in setting up</source>
        <translation>deshacer lo último hecho, de una visita abierta o al preparar</translation>
    </message>
    <message>
        <source>Ctrl+Shift+Z</source>
        <translation>Ctrl+Mayús+Z</translation>
    </message>
    <message>
        <source>do it again</source>
        <translation>volver a hacerlo</translation>
    </message>
    <message>
        <source>Ctrl+F</source>
        <translation>Ctrl+F</translation>
    </message>
    <message>
        <source>find a unit; Enter opens the first one found</source>
        <translation>buscar una unidad; Intro abre la primera hallada</translation>
    </message>
    <message>
        <source>Ctrl+1 – Ctrl+4</source>
        <translation>Ctrl+1 – Ctrl+4</translation>
    </message>
    <message>
        <source>unit, season, fleet, track record</source>
        <translation>unidad, temporada, parque, balance de pronósticos</translation>
    </message>
    <message>
        <source>Tab  Shift+Tab</source>
        <translation>Tab  Mayús+Tab</translation>
    </message>
    <message>
        <source>next field, field before</source>
        <translation>campo siguiente, campo anterior</translation>
    </message>
    <message>
        <source>F1  ?</source>
        <translation>F1  ?</translation>
    </message>
    <message>
        <source>this sheet</source>
        <translation>esta hoja</translation>
    </message>
    <message>
        <source>Keys</source>
        <translation>Teclas</translation>
    </message>
    <message>
        <source>All keys</source>
        <translation>Todas las teclas</translation>
    </message>
    <message>
        <source>B  Delete</source>
        <translation>B  Supr</translation>
    </message>
    <message>
        <source>say where the chosen photo belongs, remove it</source>
        <translation>decir a dónde pertenece la foto elegida, quitarla</translation>
    </message>
    <message>
        <source>Season</source>
        <translation>Temporada</translation>
    </message>
    <message>
        <source>←  →  ↑  ↓</source>
        <translation>←  →  ↑  ↓</translation>
    </message>
    <message>
        <source>another trip of the site, another site</source>
        <translation>otro viaje del emplazamiento, otro emplazamiento</translation>
    </message>
    <message>
        <source>Ctrl+←  Ctrl+→</source>
        <translation>Ctrl+←  Ctrl+→</translation>
    </message>
    <message>
        <source>the trip before or after, whatever its site</source>
        <translation>el viaje anterior o siguiente, sea cual sea el emplazamiento</translation>
    </message>
    <message>
        <source>Alt+←  Alt+→</source>
        <translation>Alt+←  Alt+→</translation>
    </message>
    <message>
        <source>move the trip by a week, with Shift by a day</source>
        <translation>mover el viaje una semana, con Mayús un día</translation>
    </message>
    <message>
        <source>Enter, Esc</source>
        <translation>Intro, Esc</translation>
    </message>
    <message>
        <source>put the moved trip down, give up moving it</source>
        <translation>dejar el viaje movido, abandonar el movimiento</translation>
    </message>
    <message>
        <source>Fleet</source>
        <translation>Parque</translation>
    </message>
    <message>
        <source>the next unit on that side of the field</source>
        <translation>la unidad siguiente hacia ese lado del campo</translation>
    </message>
    <message>
        <source>Space</source>
        <translation>Espacio</translation>
    </message>
    <message>
        <source>step through units gathered in one place</source>
        <translation>recorrer las unidades reunidas en un lugar</translation>
    </message>
    <message>
        <source>Enter</source>
        <translation>Intro</translation>
    </message>
    <message>
        <source>open the unit</source>
        <translation>abrir la unidad</translation>
    </message>
    <message>
        <source>K</source>
        <translation>K</translation>
    </message>
    <message>
        <source>keep the trip&apos;s day, or let it move again</source>
        <translation>mantener el día del viaje, o dejar que se mueva de nuevo</translation>
    </message>
</context>
<context>
    <name>padside::LedgerPanel</name>
    <message>
        <source>Refrigerant day by day</source>
        <translation>Refrigerante día a día</translation>
    </message>
    <message>
        <source>Day</source>
        <translation>Día</translation>
    </message>
    <message>
        <source>In</source>
        <translation>Añadido</translation>
    </message>
    <message>
        <source>Recovered</source>
        <translation>Recuperado</translation>
    </message>
    <message>
        <source>Lost</source>
        <translation>Perdido</translation>
    </message>
    <message>
        <source>For a leak</source>
        <translation>Por fuga</translation>
    </message>
    <message>
        <source>Annualizing</source>
        <translation>Anualizada</translation>
    </message>
    <message>
        <source>Rolling</source>
        <translation>Móvil</translation>
    </message>
    <message>
        <source>Cylinder, reason</source>
        <translation>Cilindro, motivo</translation>
    </message>
    <message>
        <source>Of what went in: what made up for a leak, not a charge put back</source>
        <translation>De lo añadido: lo que repuso una fuga, no una carga devuelta</translation>
    </message>
    <message>
        <source>Leak rate a year by the annualizing method</source>
        <translation>Tasa de fuga anual por el método de anualización</translation>
    </message>
    <message>
        <source>Leak rate a year by the rolling average method</source>
        <translation>Tasa de fuga anual por el método de la media móvil</translation>
    </message>
</context>
<context>
    <name>padside::LookPanel</name>
    <message>
        <source>As this computer is set</source>
        <translation>Como esté el equipo</translation>
    </message>
    <message>
        <source>%1 (its translation is missing)</source>
        <translation>%1 (falta su traducción)</translation>
    </message>
    <message>
        <source>Light</source>
        <translation>Claro</translation>
    </message>
    <message>
        <source>Dark</source>
        <translation>Oscuro</translation>
    </message>
    <message>
        <source>&amp;Language</source>
        <translation>&amp;Idioma</translation>
    </message>
    <message>
        <source>C&amp;olours</source>
        <translation>C&amp;olores</translation>
    </message>
    <message>
        <source>Language</source>
        <translation>Idioma</translation>
    </message>
    <message>
        <source>Colours</source>
        <translation>Colores</translation>
    </message>
    <message>
        <source>&amp;Field size (touch and gloves)</source>
        <translation>&amp;Tamaño de campo (tacto y guantes)</translation>
    </message>
    <message>
        <source>Sunlight (strong contrast)</source>
        <translation>Sol (contraste fuerte)</translation>
    </message>
    <message>
        <source>What you have written down stays as it was written. The command line speaks English.</source>
        <translation>Lo que ha escrito se queda como se escribió. La línea de órdenes habla inglés.</translation>
    </message>
    <message>
        <source>Language and colours</source>
        <translation>Idioma y colores</translation>
    </message>
</context>
<context>
    <name>padside::MainWindow</name>
    <message>
        <source>%1[*] – Padside</source>
        <translation>%1[*] – Padside</translation>
    </message>
    <message>
        <source>&amp;File</source>
        <translation>&amp;Archivo</translation>
    </message>
    <message>
        <source>&amp;Open…</source>
        <translation>&amp;Abrir…</translation>
    </message>
    <message>
        <source>&amp;Back up to…</source>
        <translation>&amp;Copia de seguridad…</translation>
    </message>
    <message>
        <source>&amp;Quit</source>
        <translation>&amp;Salir</translation>
    </message>
    <message>
        <source>&amp;Visit</source>
        <translation>&amp;Visita</translation>
    </message>
    <message>
        <source>Start a &amp;spring visit</source>
        <translation>Empezar una visita de &amp;primavera</translation>
    </message>
    <message>
        <source>Start a &amp;fall visit</source>
        <translation>Empezar una visita de &amp;otoño</translation>
    </message>
    <message>
        <source>Start a &amp;call-out</source>
        <translation>Empezar una visita por &amp;llamada</translation>
    </message>
    <message>
        <source>&amp;Find a unit</source>
        <translation>&amp;Buscar una unidad</translation>
    </message>
    <message>
        <source>&amp;Preferences…</source>
        <translation>&amp;Preferencias…</translation>
    </message>
    <message>
        <source>%1: done.</source>
        <translation>%1: hecho.</translation>
    </message>
    <message>
        <source>%1: cancelled; nothing was left behind.</source>
        <translation>%1: cancelado; no quedó nada a medias.</translation>
    </message>
    <message>
        <source>%1 is still going on: wait for its end, or cancel it.</source>
        <translation>%1 sigue en curso: espere a que termine, o cancélelo.</translation>
    </message>
    <message>
        <source>&amp;Back to the season</source>
        <translation>&amp;Volver a la temporada</translation>
    </message>
    <message>
        <source>&amp;Unit</source>
        <translation>&amp;Unidad</translation>
    </message>
    <message>
        <source>Ctrl+1</source>
        <translation>Ctrl+1</translation>
    </message>
    <message>
        <source>&amp;Season</source>
        <translation>&amp;Temporada</translation>
    </message>
    <message>
        <source>Ctrl+2</source>
        <translation>Ctrl+2</translation>
    </message>
    <message>
        <source>F&amp;leet</source>
        <translation>&amp;Parque</translation>
    </message>
    <message>
        <source>Ctrl+3</source>
        <translation>Ctrl+3</translation>
    </message>
    <message>
        <source>&amp;Help</source>
        <translation>Ay&amp;uda</translation>
    </message>
    <message>
        <source>&amp;Keys</source>
        <translation>&amp;Teclas</translation>
    </message>
    <message>
        <source>&amp;Track record</source>
        <translation>&amp;Balance de pronósticos</translation>
    </message>
    <message>
        <source>Ctrl+4</source>
        <translation>Ctrl+4</translation>
    </message>
</context>
<context>
    <name>padside::MeasureField</name>
    <message>
        <source>%1. Is that right? Usual here: %2 to %3.</source>
        <translation>%1. ¿Es correcto? Aquí lo usual: de %2 a %3.</translation>
    </message>
</context>
<context>
    <name>padside::MeasuredPanel</name>
    <message>
        <source>Walls and rust</source>
        <translation>Paredes y óxido</translation>
    </message>
    <message>
        <source>%1 %2</source>
        <translation>%1 %2</translation>
    </message>
    <message>
        <source>%1: measure the wall, too</source>
        <translation>%1: mida también la pared</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>Chart of %1. %2</source>
        <translation>Gráfico de %1. %2</translation>
    </message>
    <message>
        <source>No wall was gauged and no rusted share noted yet. At a visit, both are asked for beside the readings, zone by zone.</source>
        <translation>Aún no se ha medido ninguna pared ni anotado ninguna parte oxidada. En una visita, ambas se piden junto a las lecturas, zona por zona.</translation>
    </message>
</context>
<context>
    <name>padside::MessageLine</name>
    <message>
        <source>Dismiss</source>
        <translation>Quitar</translation>
    </message>
    <message>
        <source>Dismiss the message</source>
        <translation>Quitar el mensaje</translation>
    </message>
</context>
<context>
    <name>padside::NextModel</name>
    <message>
        <source>Cleared by: %1</source>
        <translation>Se resuelve así: %1</translation>
    </message>
    <message>
        <source>overdue since %1</source>
        <translation>vencida desde el %1</translation>
    </message>
    <message>
        <source>by %1</source>
        <translation>antes del %1</translation>
    </message>
    <message>
        <source>%1 to %2</source>
        <comment>first and last day</comment>
        <translation>del %1 al %2</translation>
    </message>
    <message>
        <source>Needs: %1. %2</source>
        <comment>conditions, reason</comment>
        <translation>Necesita: %1. %2</translation>
    </message>
    <message>
        <source>Flags: %1</source>
        <translation>Avisos: %1</translation>
    </message>
    <message>
        <source>Nothing is known of this unit yet: the first visit will tell.</source>
        <translation>Todavía no se sabe nada de esta unidad: la primera visita lo dirá.</translation>
    </message>
    <message>
        <source>Nothing in the record gives a reason to worry.</source>
        <translation>Nada en el registro da motivo de preocupación.</translation>
    </message>
    <message>
        <source>Next checks: %1</source>
        <translation>Próximas revisiones: %1</translation>
    </message>
    <message>
        <source>No check is due.</source>
        <translation>No toca ninguna revisión.</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <comment>place, when it is spent</comment>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>Likeliest to be spent within a year</source>
        <translation>Lo que más probablemente se agote en un año</translation>
    </message>
    <message>
        <source>Acknowledged on %1: %2</source>
        <comment>day, reason</comment>
        <translation>Visto el %1: %2</translation>
    </message>
    <message>
        <source>Acknowledged on %1 by %3: %2</source>
        <comment>day, reason, person</comment>
        <translation>Visto el %1 por %3: %2</translation>
    </message>
    <message>
        <source>▾ Acknowledged, not counted: %1</source>
        <translation>▾ Vistos, no contados: %1</translation>
    </message>
    <message>
        <source>▸ Acknowledged, not counted: %1</source>
        <translation>▸ Vistos, no contados: %1</translation>
    </message>
</context>
<context>
    <name>padside::OutlookChanges</name>
    <message>
        <source>far ahead</source>
        <translation>muy lejano</translation>
    </message>
    <message>
        <source>from %1 on</source>
        <translation>desde el %1</translation>
    </message>
    <message>
        <source>by %1</source>
        <translation>ya el %1</translation>
    </message>
    <message>
        <source>%1 to %2</source>
        <comment>first and last day</comment>
        <translation>%1 a %2</translation>
    </message>
    <message>
        <source>Spent within a year: %1 → %2</source>
        <comment>chance before, chance now</comment>
        <translation>Agotado en un año: %1 → %2</translation>
    </message>
    <message>
        <source>Range of dates: %1, as before</source>
        <translation>Intervalo de fechas: %1, como antes</translation>
    </message>
    <message>
        <source>Range of dates: %1; it was %2</source>
        <comment>now, before</comment>
        <translation>Intervalo de fechas: %1; era %2</translation>
    </message>
    <message>
        <source>Lesser changes: %1.</source>
        <translation>Cambios menores: %1.</translation>
    </message>
</context>
<context>
    <name>padside::OwnCatalogueModel</name>
    <message>
        <source>differs from ours</source>
        <translation>distinto del nuestro</translation>
    </message>
    <message>
        <source>What</source>
        <translation>Qué</translation>
    </message>
    <message>
        <source>Ours</source>
        <translation>Lo nuestro</translation>
    </message>
    <message>
        <source>Yours</source>
        <translation>Lo suyo</translation>
    </message>
    <message>
        <source>Remark</source>
        <translation>Observación</translation>
    </message>
</context>
<context>
    <name>padside::OwnCataloguePanel</name>
    <message>
        <source>Write your own words or figures beside ours; an empty field means ours. Your changes are kept in this file, and an update of ours leaves them alone.</source>
        <translation>Escriba sus propias palabras o cifras junto a las nuestras; un campo vacío significa lo nuestro. Sus cambios se guardan en este archivo, y una actualización de lo nuestro no los toca.</translation>
    </message>
    <message>
        <source>Put &amp;ours back here</source>
        <translation>Re&amp;poner lo nuestro aquí</translation>
    </message>
    <message>
        <source>For the chosen line</source>
        <translation>Para la línea elegida</translation>
    </message>
    <message>
        <source>Put ours back for the &amp;whole part</source>
        <translation>Reponer lo nuestro en &amp;toda la pieza</translation>
    </message>
    <message>
        <source>Part kinds</source>
        <translation>Clases de pieza</translation>
    </message>
    <message>
        <source>Once spent, it means</source>
        <translation>Una vez agotada, supone</translation>
    </message>
    <message>
        <source>%1 (yours)</source>
        <translation>%1 (suyo)</translation>
    </message>
    <message>
        <source>Money and prices</source>
        <translation>Dinero y precios</translation>
    </message>
    <message>
        <source>What can be your own</source>
        <translation>Lo que puede ser suyo</translation>
    </message>
    <message>
        <source>For all units</source>
        <translation>Para todas las unidades</translation>
    </message>
    <message>
        <source>Texts and figures, ours and yours</source>
        <translation>Textos y cifras, lo nuestro y lo suyo</translation>
    </message>
    <message>
        <source>Put ours back for the &amp;whole table</source>
        <translation>Reponer lo nuestro en &amp;toda la tabla</translation>
    </message>
</context>
<context>
    <name>padside::OwnValueDelegate</name>
    <message>
        <source>as ours</source>
        <translation>como lo nuestro</translation>
    </message>
</context>
<context>
    <name>padside::PagePreview</name>
    <message>
        <source>%1. Pages: %2</source>
        <translation>%1. Páginas: %2</translation>
    </message>
    <message>
        <source>Pages as they will be printed</source>
        <translation>Páginas tal como se imprimirán</translation>
    </message>
</context>
<context>
    <name>padside::PaperWork</name>
    <message>
        <source>Cancel the e&amp;xport</source>
        <translation>Cancelar la e&amp;xportación</translation>
    </message>
    <message>
        <source>Cancel p&amp;rinting</source>
        <translation>Cancelar la imp&amp;resión</translation>
    </message>
</context>
<context>
    <name>padside::PartCostsDialog</name>
    <message>
        <source>Costs: %1</source>
        <translation>Costes: %1</translation>
    </message>
    <message>
        <source>In your own money, for every part of this kind in the file. What is left empty is not reckoned with, and is named where it is missing.</source>
        <translation>En su propio dinero, para cada pieza de este tipo en el archivo. Lo que quede vacío no se cuenta y se nombra donde falta.</translation>
    </message>
    <message>
        <source>Keep</source>
        <translation>Conservar</translation>
    </message>
</context>
<context>
    <name>padside::PersonPanel</name>
    <message>
        <source>Signs every visit that is begun here</source>
        <translation>Firma toda visita que se empiece aquí</translation>
    </message>
    <message>
        <source>Stands at the head of each page</source>
        <translation>Va en la cabecera de cada página</translation>
    </message>
    <message>
        <source>As usual where this computer is</source>
        <translation>Lo usual donde está el equipo</translation>
    </message>
    <message>
        <source>A4</source>
        <translation>A4</translation>
    </message>
    <message>
        <source>Letter</source>
        <translation>Carta</translation>
    </message>
    <message>
        <source>&amp;Technician</source>
        <translation>&amp;Técnico</translation>
    </message>
    <message>
        <source>&amp;Contractor on paper</source>
        <translation>&amp;Empresa en el papel</translation>
    </message>
    <message>
        <source>&amp;Paper size</source>
        <translation>Tamaño del pape&amp;l</translation>
    </message>
    <message>
        <source>Technician</source>
        <translation>Técnico</translation>
    </message>
    <message>
        <source>Contractor on paper</source>
        <translation>Empresa en el papel</translation>
    </message>
    <message>
        <source>Paper size</source>
        <translation>Tamaño del papel</translation>
    </message>
    <message>
        <source>EUR, $, kr, … (empty: plain numbers)</source>
        <translation>EUR, $, kr, … (vacío: números sin más)</translation>
    </message>
    <message>
        <source>You and your firm</source>
        <translation>Usted y su empresa</translation>
    </message>
    <message>
        <source>Paper and money</source>
        <translation>Papel y dinero</translation>
    </message>
    <message>
        <source>Cu&amp;rrency</source>
        <translation>Mone&amp;da</translation>
    </message>
    <message>
        <source>The currency&apos;s name stands beside every amount of money, on screen and on paper. Amounts stay as they were typed; nothing is converted.</source>
        <translation>El nombre de la moneda va junto a cada importe de dinero, en pantalla y en papel. Los importes se quedan como se escribieron; no se convierte nada.</translation>
    </message>
    <message>
        <source>Currency</source>
        <translation>Moneda</translation>
    </message>
</context>
<context>
    <name>padside::PhotoPlaceDialog</name>
    <message>
        <source>Where this photo belongs</source>
        <translation>A dónde pertenece esta foto</translation>
    </message>
    <message>
        <source>Zone the photo shows</source>
        <translation>Zona que muestra la foto</translation>
    </message>
    <message>
        <source>Before or after the work</source>
        <translation>Antes o después del trabajo</translation>
    </message>
    <message>
        <source>Caption of the photo</source>
        <translation>Pie de la foto</translation>
    </message>
    <message>
        <source>Zone</source>
        <translation>Zona</translation>
    </message>
    <message>
        <source>Taken</source>
        <translation>Tomada</translation>
    </message>
    <message>
        <source>Caption</source>
        <translation>Pie</translation>
    </message>
    <message>
        <source>the whole unit</source>
        <translation>la unidad entera</translation>
    </message>
</context>
<context>
    <name>padside::PhotoStrip</name>
    <message>
        <source>Add photos</source>
        <translation>Añadir fotos</translation>
    </message>
    <message>
        <source>Photos (*.jpg *.jpeg *.png *.webp *.tif *.tiff *.gif);;All files (*)</source>
        <translation>Fotos (*.jpg *.jpeg *.png *.webp *.tif *.tiff *.gif);;Todos los archivos (*)</translation>
    </message>
    <message>
        <source>Today&apos;s photos of this zone</source>
        <translation>Fotos de hoy de esta zona</translation>
    </message>
    <message>
        <source>%1, %2 photo</source>
        <translation>%1, foto %2</translation>
    </message>
    <message>
        <source>There is no photo on the clipboard. Copy one first, then paste it here.</source>
        <translation>No hay ninguna foto en el portapapeles. Copie una antes y péguela aquí.</translation>
    </message>
    <message>
        <source>There is no photo of this zone today. Add one first.</source>
        <translation>Hoy no hay ninguna foto de esta zona. Añada una primero.</translation>
    </message>
    <message>
        <source>This visit is closed. To say where this photo belongs, press F6 and say why first.</source>
        <translation>Esta visita está cerrada. Para decir a dónde pertenece esta foto, pulse F6 y diga antes por qué.</translation>
    </message>
    <message>
        <source>&amp;Where it belongs…</source>
        <translation>&amp;A dónde pertenece…</translation>
    </message>
    <message>
        <source>B</source>
        <comment>key: where the photo belongs</comment>
        <translation>B</translation>
    </message>
    <message>
        <source>&amp;Remove</source>
        <translation>&amp;Quitar</translation>
    </message>
</context>
<context>
    <name>padside::PhotoViewer</name>
    <message>
        <source>Photograph</source>
        <translation>Fotografía</translation>
    </message>
    <message>
        <source>Photograph, enlarged</source>
        <translation>Fotografía, ampliada</translation>
    </message>
    <message>
        <source>%1. Photograph %2 of %3</source>
        <translation>%1. Fotografía %2 de %3</translation>
    </message>
    <message>
        <source>This photograph can&apos;t be read. Its file may be missing or damaged: padside verify says which.</source>
        <translation>No se puede leer esta fotografía. Puede que falte su archivo o esté dañado: padside verify lo dice.</translation>
    </message>
    <message>
        <source>Loading…</source>
        <translation>Cargando…</translation>
    </message>
    <message>
        <source>%1 of %2   ← before, → after, Esc closes</source>
        <translation>%1 de %2   ← anterior, → siguiente, Esc cierra</translation>
    </message>
</context>
<context>
    <name>padside::PhotoYears</name>
    <message>
        <source>can&apos;t be read</source>
        <translation>no se puede leer</translation>
    </message>
    <message>
        <source>loading…</source>
        <translation>cargando…</translation>
    </message>
    <message>
        <source>No photographs of this zone yet.</source>
        <translation>Todavía no hay fotografías de esta zona.</translation>
    </message>
    <message>
        <source>Close</source>
        <translation>Cerrar</translation>
    </message>
    <message>
        <source>Close the photographs</source>
        <translation>Cerrar las fotografías</translation>
    </message>
    <message>
        <source>as left</source>
        <translation>al irse</translation>
    </message>
    <message>
        <source>as found</source>
        <translation>al llegar</translation>
    </message>
    <message>
        <source>new part, %1</source>
        <translation>pieza nueva, %1</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <comment>phase, caption</comment>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>%1 %2</source>
        <comment>numeral and word of a grade</comment>
        <translation>%1 %2</translation>
    </message>
    <message>
        <source>not seen (%1)</source>
        <translation>sin ver (%1)</translation>
    </message>
    <message>
        <source>no grade</source>
        <translation>sin grado</translation>
    </message>
    <message>
        <source>%1, %2: %3, %4</source>
        <comment>zone, date: grade, phase</comment>
        <translation>%1, %2: %3, %4</translation>
    </message>
    <message>
        <source>%1: 1 photograph</source>
        <comment>zone</comment>
        <translation>%1: 1 fotografía</translation>
    </message>
    <message>
        <source>%1: %2 photographs</source>
        <comment>zone, count</comment>
        <translation>%1: %2 fotografías</translation>
    </message>
    <message>
        <source>Photographs of %1 through the years</source>
        <translation>Fotografías de %1 a lo largo de los años</translation>
    </message>
</context>
<context>
    <name>padside::PreferencesDialog</name>
    <message>
        <source>Preferences</source>
        <translation>Preferencias</translation>
    </message>
    <message>
        <source>U&amp;nits</source>
        <translation>U&amp;nidades</translation>
    </message>
    <message>
        <source>&amp;Seasons in this file</source>
        <translation>Tempo&amp;radas en este archivo</translation>
    </message>
    <message>
        <source>Your c&amp;atalogue in this file</source>
        <translation>&amp;Su catálogo en este archivo</translation>
    </message>
    <message>
        <source>Kinds of preferences</source>
        <translation>Clases de preferencias</translation>
    </message>
    <message>
        <source>&amp;You on this computer</source>
        <translation>&amp;Usted en este equipo</translation>
    </message>
    <message>
        <source>Kept on this computer, whichever file is open. It takes effect when you choose OK.</source>
        <translation>Se guarda en este equipo, sea cual sea el archivo abierto. Surte efecto al elegir Aceptar.</translation>
    </message>
</context>
<context>
    <name>padside::PrintPage</name>
    <message>
        <source>&amp;Back to the unit</source>
        <translation>&amp;Volver a la unidad</translation>
    </message>
    <message>
        <source>Export as &amp;PDF…</source>
        <translation>Exportar como &amp;PDF…</translation>
    </message>
    <message>
        <source>P&amp;rint…</source>
        <translation>&amp;Imprimir…</translation>
    </message>
    <message>
        <source>PDF files (*.pdf)</source>
        <translation>Archivos PDF (*.pdf)</translation>
    </message>
    <message>
        <source>A4</source>
        <translation>A4</translation>
    </message>
    <message>
        <source>Letter</source>
        <translation>Carta</translation>
    </message>
    <message>
        <source>Name at the head of the page</source>
        <translation>Nombre en la cabecera de la página</translation>
    </message>
    <message>
        <source>Pa&amp;per</source>
        <translation>Pap&amp;el</translation>
    </message>
    <message>
        <source>&amp;Contractor</source>
        <translation>&amp;Empresa</translation>
    </message>
    <message>
        <source>Exported to %1</source>
        <translation>Exportado a %1</translation>
    </message>
    <message>
        <source>Sent to the printer.</source>
        <translation>Enviado a la impresora.</translation>
    </message>
    <message>
        <source>Export as PDF</source>
        <translation>Exportar como PDF</translation>
    </message>
    <message>
        <source>Visit summary</source>
        <translation>Resumen de la visita</translation>
    </message>
    <message>
        <source>Contractor</source>
        <translation>Contratista</translation>
    </message>
    <message>
        <source>Paper size</source>
        <translation>Tamaño del papel</translation>
    </message>
    <message>
        <source>Cancelled; nothing was written or printed.</source>
        <translation>Cancelado; no se ha escrito ni impreso nada.</translation>
    </message>
    <message>
        <source>Timeline</source>
        <translation>Línea de tiempo</translation>
    </message>
    <message>
        <source>Owner&apos;s history</source>
        <translation>Historial del propietario</translation>
    </message>
</context>
<context>
    <name>padside::RatesModel</name>
    <message>
        <source>%1 zones, %2 grades</source>
        <translation>%1 zonas, %2 grados</translation>
    </message>
    <message>
        <source>%1 to %2</source>
        <translation>%1 a %2</translation>
    </message>
    <message>
        <source>Part</source>
        <translation>Pieza</translation>
    </message>
    <message>
        <source>Your records</source>
        <translation>Sus registros</translation>
    </message>
    <message>
        <source>Between</source>
        <translation>Entre</translation>
    </message>
    <message>
        <source>From records</source>
        <translation>De los registros</translation>
    </message>
    <message>
        <source>The kind of part; dirt on its zones is learned by itself</source>
        <translation>El tipo de pieza; la suciedad de sus zonas se aprende aparte</translation>
    </message>
    <message>
        <source>How many zones taught something, and how many grades were seen of them</source>
        <translation>Cuántas zonas enseñaron algo, y cuántos grados se vieron de ellas</translation>
    </message>
    <message>
        <source>Years from sound to spent of the middle one of many, as we assume</source>
        <translation>Años de sano a agotado del que está en medio entre muchos, según suponemos</translation>
    </message>
    <message>
        <source>Years from sound to spent that forecasts rest on now</source>
        <translation>Años de sano a agotado en que se apoyan ahora los pronósticos</translation>
    </message>
    <message>
        <source>Years from sound to spent that your records and our assumption together say</source>
        <translation>Años de sano a agotado que dicen juntos sus registros y nuestra suposición</translation>
    </message>
    <message>
        <source>One standard error to either side of the years learned</source>
        <translation>Un error típico a cada lado de los años aprendidos</translation>
    </message>
    <message>
        <source>Years of one zone in grade 1, 2, 3 and 4 that forecasts rest on now</source>
        <translation>Años de una zona en los grados 1, 2, 3 y 4 en que se apoyan ahora los pronósticos</translation>
    </message>
    <message>
        <source>Years of one zone in grade 1, 2, 3 and 4 as learned</source>
        <translation>Años de una zona en los grados 1, 2, 3 y 4, según lo aprendido</translation>
    </message>
    <message>
        <source>How much of what is known comes from your records; the rest is our assumption</source>
        <translation>Cuánto de lo que se sabe viene de sus registros; el resto es suposición nuestra</translation>
    </message>
    <message>
        <source>Ours, years</source>
        <translation>Nuestro, años</translation>
    </message>
    <message>
        <source>In use, years</source>
        <translation>En uso, años</translation>
    </message>
    <message>
        <source>in grades 1 to 4</source>
        <translation>en los grados 1 a 4</translation>
    </message>
    <message>
        <source>In use since</source>
        <translation>En uso desde</translation>
    </message>
    <message>
        <source>Learned, years</source>
        <translation>Aprendido, años</translation>
    </message>
    <message>
        <source>The day on which what is in use was learned; ours where there is none</source>
        <translation>El día en que se aprendió lo que está en uso; donde no hay, es lo nuestro</translation>
    </message>
</context>
<context>
    <name>padside::RatesPanel</name>
    <message>
        <source>Learning from your records</source>
        <translation>Aprendiendo de sus registros</translation>
    </message>
    <message>
        <source>Choose &amp;all</source>
        <translation>Elegir &amp;todo</translation>
    </message>
    <message>
        <source>Put &amp;ours back for those chosen</source>
        <translation>Volver a lo nuestr&amp;o en lo elegido</translation>
    </message>
    <message>
        <source>Forecasts begin with our assumptions of how long parts last. Your records can correct them, part kind by part kind. Nothing changes until you say so, and ours can be put back. Years are those of a dry, bare part in middling air; wet and salt count extra.</source>
        <translation>Los pronósticos parten de nuestras suposiciones sobre cuánto duran las piezas. Sus registros pueden corregirlas, tipo por tipo. Nada cambia hasta que usted lo diga, y se puede volver a lo nuestro. Los años son los de una pieza seca y sin recubrir en un aire medio; la humedad y la sal cuentan aparte.</translation>
    </message>
    <message>
        <source>How long parts last; Space chooses a line</source>
        <translation>Cuánto duran las piezas; Espacio elige una línea</translation>
    </message>
    <message>
        <source>Cancelled: nothing was learned, and nothing has changed.</source>
        <translation>Cancelado: no se aprendió nada y nada ha cambiado.</translation>
    </message>
    <message>
        <source>Nothing was learned yet: all forecasts rest on our assumptions.</source>
        <translation>Aún no se aprendió nada: todos los pronósticos se apoyan en nuestras suposiciones.</translation>
    </message>
    <message>
        <source>These were learned before and are in use.</source>
        <translation>Esto se aprendió antes y está en uso.</translation>
    </message>
    <message>
        <source>This may take a while; you can go on working meanwhile.</source>
        <translation>Puede tardar un rato; mientras tanto puede seguir trabajando.</translation>
    </message>
    <message>
        <source>Learned, not yet in use: choose the parts whose figures you want to use.</source>
        <translation>Aprendido, aún sin usar: elija las piezas cuyas cifras quiere usar.</translation>
    </message>
    <message>
        <source>There is nothing to learn from yet: no zone has been graded at a closed visit.</source>
        <translation>Aún no hay de qué aprender: ninguna zona se ha calificado en una visita cerrada.</translation>
    </message>
    <message>
        <source>Choose &amp;none</source>
        <translation>No elegir &amp;nada</translation>
    </message>
    <message>
        <source>Learn from &amp;these records</source>
        <translation>Aprende&amp;r de estos registros</translation>
    </message>
    <message>
        <source>Use what was learned for those &amp;chosen</source>
        <translation>Usar &amp;lo aprendido en lo elegido</translation>
    </message>
</context>
<context>
    <name>padside::ReadingsPanel</name>
    <message>
        <source>Find another reading</source>
        <translation>Buscar otra lectura</translation>
    </message>
    <message>
        <source>%1 (%2)</source>
        <translation>%1 (%2)</translation>
    </message>
    <message>
        <source>last %1, %2</source>
        <translation>última %1, %2</translation>
    </message>
    <message>
        <source>%1 “%2”</source>
        <translation>%1 «%2»</translation>
    </message>
    <message>
        <source>As found</source>
        <translation>Al llegar</translation>
    </message>
    <message>
        <source>As left</source>
        <translation>Al irse</translation>
    </message>
    <message>
        <source>Readings as found</source>
        <translation>Lecturas al llegar</translation>
    </message>
    <message>
        <source>Readings as left</source>
        <translation>Lecturas al irse</translation>
    </message>
    <message>
        <source>Why</source>
        <translation>Por qué</translation>
    </message>
    <message>
        <source>Why: show what speaks for and against it</source>
        <translation>Por qué: mostrar qué habla a favor y en contra</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>May point to %1.</source>
        <translation>Puede indicar %1.</translation>
    </message>
</context>
<context>
    <name>padside::RecordBook</name>
    <message>
        <source>%1. %2</source>
        <translation>%1. %2</translation>
    </message>
</context>
<context>
    <name>padside::RetireDialog</name>
    <message>
        <source>Retire %1</source>
        <translation>Retirar %1</translation>
    </message>
    <message>
        <source>Replaced, scrapped, given up</source>
        <translation>Sustituida, desguazada, abandonada</translation>
    </message>
    <message>
        <source>A retired unit keeps its record, but is no longer planned for visits. It can be brought back.</source>
        <translation>Una unidad retirada conserva su registro, pero ya no se le planean visitas. Se puede recuperar.</translation>
    </message>
    <message>
        <source>&amp;Day</source>
        <translation>&amp;Día</translation>
    </message>
    <message>
        <source>&amp;Reason</source>
        <translation>&amp;Motivo</translation>
    </message>
    <message>
        <source>Retire it</source>
        <translation>Retirarla</translation>
    </message>
    <message>
        <source>Say in a few words why: the next person will ask.</source>
        <translation>Diga en pocas palabras por qué: quien venga después lo preguntará.</translation>
    </message>
</context>
<context>
    <name>padside::SeasonBoardView</name>
    <message>
        <source>Trips by site and week</source>
        <translation>Viajes por emplazamiento y semana</translation>
    </message>
    <message>
        <source>Trips by site and week, board</source>
        <translation>Viajes por emplazamiento y semana, tablero</translation>
    </message>
    <message>
        <source>Week from</source>
        <translation>Semana desde</translation>
    </message>
    <message>
        <source>Trips</source>
        <translation>Viajes</translation>
    </message>
</context>
<context>
    <name>padside::SeasonPage</name>
    <message>
        <source>&amp;Stop</source>
        <translation>&amp;Detener</translation>
    </message>
    <message>
        <source>&amp;Day&apos;s sheet</source>
        <translation>&amp;Hoja del día</translation>
    </message>
    <message>
        <source>&lt;p&gt;This trip is no longer needed.&lt;/p&gt;</source>
        <translation>&lt;p&gt;Este viaje ya no hace falta.&lt;/p&gt;</translation>
    </message>
    <message>
        <source>&lt;p&gt;Choose a trip to see what is to be looked at, and why.&lt;/p&gt;</source>
        <translation>&lt;p&gt;Elija un viaje para ver qué hay que mirar y por qué.&lt;/p&gt;</translation>
    </message>
    <message>
        <source>Move trip to %1</source>
        <translation>Mover el viaje al %1</translation>
    </message>
    <message>
        <source>Find a site</source>
        <translation>Buscar un emplazamiento</translation>
    </message>
    <message>
        <source>Units reviewed</source>
        <translation>Unidades revisadas</translation>
    </message>
    <message>
        <source>The chosen trip</source>
        <translation>El viaje elegido</translation>
    </message>
    <message>
        <source>Reading the record…</source>
        <translation>Leyendo el registro…</translation>
    </message>
    <message>
        <source>%1 of %2 units reviewed, %3 trips so far.</source>
        <translation>%1 de %2 unidades revisadas, %3 viajes hasta ahora.</translation>
    </message>
    <message>
        <source>Stopped: %1 of %2 units are reviewed. Trips of the others are missing here.</source>
        <translation>Detenido: %1 de %2 unidades revisadas. Faltan aquí los viajes de las demás.</translation>
    </message>
    <message>
        <source>One trip in the coming year.</source>
        <translation>Un viaje en el próximo año.</translation>
    </message>
    <message numerus="yes">
        <source>%n trips in the coming year.</source>
        <translation>
            <numerusform>%n viaje en el próximo año.</numerusform>
            <numerusform>%n viajes en el próximo año.</numerusform>
        </translation>
    </message>
    <message>
        <source>Could not be read: %1 (%2).</source>
        <translation>No se pudo leer: %1 (%2).</translation>
    </message>
    <message numerus="yes">
        <source>And %n more.</source>
        <translation>
            <numerusform>Y %n más.</numerusform>
            <numerusform>Y %n más.</numerusform>
        </translation>
    </message>
    <message>
        <source>&amp;Go on</source>
        <translation>&amp;Seguir</translation>
    </message>
    <message>
        <source>&lt;h3&gt;This file has no units yet.&lt;/h3&gt;&lt;p&gt;Trips will stand here once there are units.&lt;/p&gt;</source>
        <translation>&lt;h3&gt;Este archivo todavía no tiene unidades.&lt;/h3&gt;&lt;p&gt;Aquí habrá viajes cuando haya unidades.&lt;/p&gt;</translation>
    </message>
    <message>
        <source>&lt;h3&gt;Nothing is due in the coming year.&lt;/h3&gt;&lt;p&gt;Checks follow from visits: log one, and what is to be looked at again will stand here.&lt;/p&gt;</source>
        <translation>&lt;h3&gt;No toca nada en el próximo año.&lt;/h3&gt;&lt;p&gt;Las revisiones salen de las visitas: anote una, y aquí estará lo que hay que volver a mirar.&lt;/p&gt;</translation>
    </message>
    <message>
        <source>Parts to &amp;order</source>
        <translation>Piezas por &amp;pedir</translation>
    </message>
    <message>
        <source>Parts to order</source>
        <translation>Piezas por pedir</translation>
    </message>
    <message>
        <source>Show the parts to order instead of the trip</source>
        <translation>Mostrar las piezas por pedir en lugar del viaje</translation>
    </message>
    <message>
        <source>No trips in the coming year.</source>
        <translation>Ningún viaje en el próximo año.</translation>
    </message>
    <message>
        <source>Ove&amp;rdue checks</source>
        <translation>Revisiones ve&amp;ncidas</translation>
    </message>
    <message>
        <source>&amp;Back to the day worked out</source>
        <translation>Volver al día &amp;calculado</translation>
    </message>
    <message>
        <source>Let it &amp;move again</source>
        <translation>Dejar &amp;que se mueva</translation>
    </message>
    <message>
        <source>&amp;Keep this day</source>
        <translation>&amp;Mantener este día</translation>
    </message>
    <message>
        <source>Overdue checks</source>
        <translation>Revisiones vencidas</translation>
    </message>
    <message>
        <source>This day was chosen by hand, so it stays as it is.</source>
        <translation>Este día se eligió a mano, así que se queda como está.</translation>
    </message>
    <message>
        <source>Keep the day of the trip to %1</source>
        <translation>Mantener el día del viaje a %1</translation>
    </message>
    <message>
        <source>Let the trip to %1 move again</source>
        <translation>Dejar que el viaje a %1 se mueva de nuevo</translation>
    </message>
    <message>
        <source>Show what is overdue instead of the trip</source>
        <translation>Mostrar lo vencido en lugar del viaje</translation>
    </message>
    <message>
        <source>A day that is kept stays, whatever is found until then. Key: K</source>
        <translation>Un día que se mantiene se queda, se encuentre lo que se encuentre hasta entonces. Tecla: K</translation>
    </message>
    <message>
        <source>Number: checks of the trip · filled: overdue or late · foot: the day stays, kept or moved by hand · shaded: the site&apos;s spring and fall weeks</source>
        <translation>Número: revisiones del viaje · relleno: vencido o tarde · pie: el día se queda, mantenido o movido a mano · sombreado: semanas de primavera y otoño del emplazamiento</translation>
    </message>
    <message>
        <source>K keeps a trip&apos;s day; Alt+←/→ moves it by a week, with Shift by a day; Enter puts it down, Esc gives up</source>
        <translation>K mantiene el día de un viaje; Alt+←/→ lo mueve una semana, con Mayús un día; Intro lo deja, Esc lo abandona</translation>
    </message>
</context>
<context>
    <name>padside::SeasonPanel</name>
    <message>
        <source>Site</source>
        <translation>Emplazamiento</translation>
    </message>
    <message>
        <source>Weeks of the year (ISO 8601) in which the sites in this file are visited. South of the equator spring comes late in the year.</source>
        <translation>Semanas del año (ISO 8601) en que se visitan los emplazamientos de este archivo. Al sur del ecuador la primavera llega al final del año.</translation>
    </message>
    <message>
        <source>This file has no sites yet.</source>
        <translation>Este archivo todavía no tiene emplazamientos.</translation>
    </message>
    <message>
        <source>%1: first week of spring</source>
        <translation>%1: primera semana de primavera</translation>
    </message>
    <message>
        <source>%1: last week of spring</source>
        <translation>%1: última semana de primavera</translation>
    </message>
    <message>
        <source>%1: first week of fall</source>
        <translation>%1: primera semana de otoño</translation>
    </message>
    <message>
        <source>%1: last week of fall</source>
        <translation>%1: última semana de otoño</translation>
    </message>
    <message>
        <source>Swap spring and fall</source>
        <translation>Intercambiar primavera y otoño</translation>
    </message>
    <message>
        <source>%1: swap spring and fall</source>
        <translation>%1: intercambiar primavera y otoño</translation>
    </message>
    <message>
        <source>Spring would end before it begins. Put its first week before its last.</source>
        <translation>La primavera terminaría antes de empezar. Ponga su primera semana antes de la última.</translation>
    </message>
    <message>
        <source>Fall would end before it begins. Put its first week before its last.</source>
        <translation>El otoño terminaría antes de empezar. Ponga su primera semana antes de la última.</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <comment>site, what is wrong</comment>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>%1 to %2</source>
        <translation>del %1 al %2</translation>
    </message>
    <message>
        <source>Spring %1, fall %2</source>
        <translation>Primavera %1, otoño %2</translation>
    </message>
    <message>
        <source>Spring and fall would overlap. Move one of them.</source>
        <translation>Primavera y otoño se solaparían. Mueva una de las dos.</translation>
    </message>
    <message>
        <source>Weeks of spring</source>
        <translation>Semanas de primavera</translation>
    </message>
    <message>
        <source>Weeks of fall</source>
        <translation>Semanas de otoño</translation>
    </message>
</context>
<context>
    <name>padside::SeasonWords</name>
    <message>
        <source>%1 %2</source>
        <comment>weekday and date</comment>
        <translation>%1 %2</translation>
    </message>
    <message>
        <source>No check needs this day any more.</source>
        <translation>Ninguna revisión necesita ya este día.</translation>
    </message>
    <message>
        <source>One check should have been done before today.</source>
        <translation>Una revisión debería haberse hecho antes de hoy.</translation>
    </message>
    <message numerus="yes">
        <source>%n checks should have been done before today.</source>
        <translation>
            <numerusform>%n revisión debería haberse hecho antes de hoy.</numerusform>
            <numerusform>%n revisiones deberían haberse hecho antes de hoy.</numerusform>
        </translation>
    </message>
    <message>
        <source>One check comes after its latest day.</source>
        <translation>Una revisión llega después de su último día.</translation>
    </message>
    <message numerus="yes">
        <source>%n checks come after their latest day.</source>
        <translation>
            <numerusform>%n revisión llega después de su último día.</numerusform>
            <numerusform>%n revisiones llegan después de su último día.</numerusform>
        </translation>
    </message>
    <message>
        <source>Day chosen by hand; worked out was %1.</source>
        <translation>Día elegido a mano; el calculado era %1.</translation>
    </message>
    <message>
        <source>This is not a working day.</source>
        <translation>No es un día laborable.</translation>
    </message>
    <message>
        <source>one check</source>
        <translation>una revisión</translation>
    </message>
    <message numerus="yes">
        <source>%n checks</source>
        <translation>
            <numerusform>%n revisión</numerusform>
            <numerusform>%n revisiones</numerusform>
        </translation>
    </message>
    <message>
        <source>one unit</source>
        <translation>una unidad</translation>
    </message>
    <message numerus="yes">
        <source>%n units</source>
        <translation>
            <numerusform>%n unidad</numerusform>
            <numerusform>%n unidades</numerusform>
        </translation>
    </message>
    <message>
        <source>%1 instead of %2.</source>
        <translation>%1 en vez de %2.</translation>
    </message>
    <message>
        <source>Hit hardest: %1, %2 (%3).</source>
        <translation>Lo más afectado: %1, %2 (%3).</translation>
    </message>
    <message>
        <source>It is not a working day.</source>
        <translation>No es un día laborable.</translation>
    </message>
    <message>
        <source>overdue since %1</source>
        <translation>vencida desde el %1</translation>
    </message>
    <message>
        <source>%1 to %2</source>
        <translation>del %1 al %2</translation>
    </message>
    <message>
        <source>%1, &lt;b&gt;a day late&lt;/b&gt;</source>
        <translation>%1, &lt;b&gt;un día tarde&lt;/b&gt;</translation>
    </message>
    <message numerus="yes">
        <source>%1, &lt;b&gt;%n days late&lt;/b&gt;</source>
        <translation>
            <numerusform>%1, &lt;b&gt;%n día tarde&lt;/b&gt;</numerusform>
            <numerusform>%1, &lt;b&gt;%n días tarde&lt;/b&gt;</numerusform>
        </translation>
    </message>
    <message>
        <source> · needs: %1</source>
        <translation> · necesita: %1</translation>
    </message>
    <message>
        <source>, </source>
        <translation>, </translation>
    </message>
    <message>
        <source>Start spring visit</source>
        <translation>Visita de primavera</translation>
    </message>
    <message>
        <source>Start fall visit</source>
        <translation>Visita de otoño</translation>
    </message>
    <message>
        <source>Start call-out</source>
        <translation>Visita por llamada</translation>
    </message>
    <message>
        <source>History</source>
        <translation>Historial</translation>
    </message>
    <message>
        <source>Field sheet</source>
        <translation>Hoja de campo</translation>
    </message>
    <message>
        <source>Bring</source>
        <translation>Llevar</translation>
    </message>
    <message>
        <source>Spares to order or ask for</source>
        <translation>Repuestos que pedir o consultar</translation>
    </message>
    <message>
        <source>Can wait least: %1, %2 (%3).</source>
        <translation>Lo que menos puede esperar: %1, %2 (%3).</translation>
    </message>
    <message>
        <source>What to bring</source>
        <translation>Qué llevar</translation>
    </message>
    <message>
        <source>Spares</source>
        <translation>Repuestos</translation>
    </message>
    <message>
        <source>no longer made; look for one by %1</source>
        <translation>ya no se fabrica; busque uno antes del %1</translation>
    </message>
    <message>
        <source>order now</source>
        <translation>pedir ahora</translation>
    </message>
    <message>
        <source>order by %1</source>
        <translation>pedir a más tardar el %1</translation>
    </message>
    <message>
        <source>How long a spare takes to come is an assumption.</source>
        <translation>Lo que tarda en llegar un repuesto es una suposición.</translation>
    </message>
    <message>
        <source>Parts to order</source>
        <translation>Piezas por pedir</translation>
    </message>
    <message>
        <source>No part is likely to be needed before it could be there.</source>
        <translation>No es probable que haga falta ninguna pieza antes de que pueda llegar.</translation>
    </message>
    <message numerus="yes">
        <source>Parts whose chance of being spent passes what is tolerated within %n months. How long a spare takes to come is an assumption.</source>
        <translation>
            <numerusform>Piezas cuya probabilidad de estar agotadas pasa de lo tolerado dentro de %n mes. Lo que tarda en llegar un repuesto es una suposición.</numerusform>
            <numerusform>Piezas cuya probabilidad de estar agotadas pasa de lo tolerado dentro de %n meses. Lo que tarda en llegar un repuesto es una suposición.</numerusform>
        </translation>
    </message>
    <message>
        <source>Nothing is overdue.</source>
        <translation>No hay nada vencido.</translation>
    </message>
    <message>
        <source>Overdue: %1.</source>
        <translation>Vencido: %1.</translation>
    </message>
    <message>
        <source>Overdue checks</source>
        <translation>Revisiones vencidas</translation>
    </message>
    <message>
        <source>Most pressing first: where the chance that something is spent is furthest past what is tolerated.</source>
        <translation>Primero lo que más apremia: donde la probabilidad de que algo esté agotado pasa más de lo tolerado.</translation>
    </message>
    <message>
        <source>one check overdue</source>
        <translation>una revisión vencida</translation>
    </message>
    <message numerus="yes">
        <source>%n checks overdue</source>
        <translation>
            <numerusform>%n revisión vencida</numerusform>
            <numerusform>%n revisiones vencidas</numerusform>
        </translation>
    </message>
    <message>
        <source>Its trip</source>
        <translation>Su viaje</translation>
    </message>
    <message>
        <source>%1 at %2</source>
        <translation>%1 en %2</translation>
    </message>
    <message>
        <source>This day is kept, whatever is found until then.</source>
        <translation>Este día se mantiene, se encuentre lo que se encuentre hasta entonces.</translation>
    </message>
    <message>
        <source>Worked out today, it would be %1.</source>
        <translation>Calculado hoy, sería el %1.</translation>
    </message>
    <message>
        <source>Because this day stays, one more trip is needed, on %1.</source>
        <translation>Como este día se queda, hace falta un viaje más, el %1.</translation>
    </message>
    <message numerus="yes">
        <source>Because this day stays, more trips are needed: %n.</source>
        <translation>
            <numerusform>Como este día se queda, hacen falta más viajes: %n.</numerusform>
            <numerusform>Como este día se queda, hacen falta más viajes: %n.</numerusform>
        </translation>
    </message>
    <message>
        <source>It is a trip of its own because the day of the trip on %1 stays.</source>
        <translation>Es un viaje aparte porque el día del viaje del %1 se queda.</translation>
    </message>
    <message>
        <source>%1, %2: %3.</source>
        <translation>%1, %2: %3.</translation>
    </message>
    <message numerus="yes">
        <source>%1, &lt;b&gt;%n overdue&lt;/b&gt;</source>
        <translation>
            <numerusform>%1, &lt;b&gt;%n vencida&lt;/b&gt;</numerusform>
            <numerusform>%1, &lt;b&gt;%n vencidas&lt;/b&gt;</numerusform>
        </translation>
    </message>
    <message>
        <source>Look first at %1, %2 (%3).</source>
        <translation>Mire primero %1, %2 (%3).</translation>
    </message>
</context>
<context>
    <name>padside::SetupMenu</name>
    <message>
        <source>Set &amp;up</source>
        <translation>&amp;Preparar</translation>
    </message>
    <message>
        <source>a unit</source>
        <translation>una unidad</translation>
    </message>
    <message>
        <source>Add a &amp;unit…</source>
        <translation>Añadir una &amp;unidad…</translation>
    </message>
    <message>
        <source>One &amp;like %1…</source>
        <translation>&amp;Otra como %1…</translation>
    </message>
    <message>
        <source>Ctrl+Shift+N</source>
        <translation>Ctrl+Shift+N</translation>
    </message>
    <message>
        <source>Units from a l&amp;ist…</source>
        <translation>Unidades de una &amp;lista…</translation>
    </message>
    <message>
        <source>Ctrl+Shift+I</source>
        <translation>Ctrl+Shift+I</translation>
    </message>
    <message>
        <source>&amp;Change or move %1…</source>
        <translation>Ca&amp;mbiar o trasladar %1…</translation>
    </message>
    <message>
        <source>Ctrl+E</source>
        <translation>Ctrl+E</translation>
    </message>
    <message>
        <source>&amp;Retire %1…</source>
        <translation>&amp;Retirar %1…</translation>
    </message>
    <message>
        <source>&amp;Bring %1 back</source>
        <translation>Recu&amp;perar %1</translation>
    </message>
    <message>
        <source>Remove %1: added by &amp;mistake</source>
        <translation>&amp;Quitar %1: se añadió por error</translation>
    </message>
    <message>
        <source>Add a &amp;site…</source>
        <translation>Añadir un &amp;emplazamiento…</translation>
    </message>
    <message>
        <source>Change the si&amp;te of %1…</source>
        <translation>Cambiar el empla&amp;zamiento de %1…</translation>
    </message>
    <message>
        <source>Ctrl+Shift+E</source>
        <translation>Ctrl+Shift+E</translation>
    </message>
    <message>
        <source>One unit was added.</source>
        <translation>Se añadió una unidad.</translation>
    </message>
    <message numerus="yes">
        <source>%n units were added.</source>
        <translation>
            <numerusform>Se añadió %n unidad.</numerusform>
            <numerusform>Se añadieron %n unidades.</numerusform>
        </translation>
    </message>
    <message>
        <source>%1 is in service again: its visits are planned once more.</source>
        <translation>%1 está de nuevo en servicio: vuelven a planearse sus visitas.</translation>
    </message>
    <message>
        <source>%1 was removed. Edit, Undo brings it back.</source>
        <translation>%1 se quitó. Editar, Deshacer la recupera.</translation>
    </message>
</context>
<context>
    <name>padside::SiteAirPanel</name>
    <message>
        <source>&amp;Read a weather file…</source>
        <translation>Lee&amp;r un archivo meteorológico…</translation>
    </message>
    <message>
        <source>Hourly weather as EPW, or CSV with columns like time, temperature_C, rh_percent</source>
        <translation>Datos horarios en EPW, o en CSV con columnas como time, temperature_C, rh_percent</translation>
    </message>
    <message>
        <source>S&amp;uction line at</source>
        <translation>Línea de s&amp;ucción a</translation>
    </message>
    <message>
        <source>Suction line at</source>
        <translation>Línea de succión a</translation>
    </message>
    <message>
        <source>With temperature, humidity, sulphur dioxide and chloride you read here what this air does to metal (ISO 9223).</source>
        <translation>Con temperatura, humedad, dióxido de azufre y cloruro aquí se lee lo que este aire hace al metal (ISO 9223).</translation>
    </message>
    <message>
        <source>Choose a weather file</source>
        <translation>Elegir un archivo meteorológico</translation>
    </message>
    <message>
        <source>Weather (*.epw *.csv);;All files (*)</source>
        <translation>Datos meteorológicos (*.epw *.csv);;Todos los archivos (*)</translation>
    </message>
    <message>
        <source>Reading %1</source>
        <translation>Lectura %1</translation>
    </message>
</context>
<context>
    <name>padside::SiteDialog</name>
    <message>
        <source>Site %1</source>
        <translation>Emplazamiento %1</translation>
    </message>
    <message>
        <source>New site</source>
        <translation>Emplazamiento nuevo</translation>
    </message>
    <message>
        <source>Add the site</source>
        <translation>Añadir el emplazamiento</translation>
    </message>
    <message>
        <source>A name is enough; the rest can be filled in later. Next you add the first unit that stands there.</source>
        <translation>Basta un nombre; lo demás puede completarse después. A continuación añade la primera unidad que está allí.</translation>
    </message>
    <message>
        <source>Keep</source>
        <translation>Conservar</translation>
    </message>
</context>
<context>
    <name>padside::SiteForm</name>
    <message>
        <source>&amp;Name</source>
        <translation>&amp;Nombre</translation>
    </message>
    <message>
        <source>Needed; the rest may wait</source>
        <translation>Hace falta; lo demás puede esperar</translation>
    </message>
    <message>
        <source>A&amp;ddress</source>
        <translation>&amp;Dirección</translation>
    </message>
    <message>
        <source>&amp;Contact</source>
        <translation>&amp;Contacto</translation>
    </message>
    <message>
        <source>Who opens, and how to reach them</source>
        <translation>Quién abre y cómo avisarle</translation>
    </message>
    <message>
        <source>Acce&amp;ss</source>
        <translation>Acce&amp;so</translation>
    </message>
    <message>
        <source>Gate, ladder, dog</source>
        <translation>Portón, escalera, perro</translation>
    </message>
    <message>
        <source>N&amp;ote</source>
        <translation>N&amp;ota</translation>
    </message>
    <message>
        <source>Air, as means of the year</source>
        <translation>Aire, medias del año</translation>
    </message>
    <message>
        <source>A&amp;ltitude</source>
        <translation>A&amp;ltitud</translation>
    </message>
    <message>
        <source>In metres</source>
        <translation>En metros</translation>
    </message>
    <message>
        <source>In feet</source>
        <translation>En pies</translation>
    </message>
    <message>
        <source>&amp;Temperature</source>
        <translation>&amp;Temperatura</translation>
    </message>
    <message>
        <source>In %1</source>
        <translation>En %1</translation>
    </message>
    <message>
        <source>Relative &amp;humidity</source>
        <translation>&amp;Humedad relativa</translation>
    </message>
    <message>
        <source>In %</source>
        <translation>En %</translation>
    </message>
    <message>
        <source>Sulphur dio&amp;xide</source>
        <translation>Dió&amp;xido de azufre</translation>
    </message>
    <message>
        <source>Deposition in mg/(m²·d)</source>
        <translation>Depósito en mg/(m²·d)</translation>
    </message>
    <message>
        <source>Chlo&amp;ride</source>
        <translation>Clo&amp;ruro</translation>
    </message>
    <message>
        <source>Deposition in mg/(m²·d); salt air</source>
        <translation>Depósito en mg/(m²·d); aire salino</translation>
    </message>
    <message>
        <source>Weeks for visits, as calendars number them</source>
        <translation>Semanas de visita, como las numeran los calendarios</translation>
    </message>
    <message>
        <source>S&amp;pring from week</source>
        <translation>&amp;Primavera desde la semana</translation>
    </message>
    <message>
        <source>Spring to &amp;week</source>
        <translation>Prima&amp;vera hasta la semana</translation>
    </message>
    <message>
        <source>&amp;Fall from week</source>
        <translation>Otoño d&amp;esde la semana</translation>
    </message>
    <message>
        <source>Fall to w&amp;eek</source>
        <translation>Otoño h&amp;asta la semana</translation>
    </message>
</context>
<context>
    <name>padside::SuspicionList</name>
    <message>
        <source>What the readings may point to</source>
        <translation>Qué pueden indicar las lecturas</translation>
    </message>
    <message>
        <source>A hint from common practice, not a verdict; a licensed technician decides.</source>
        <translation>Un indicio de la práctica común, no un veredicto; decide un técnico con licencia.</translation>
    </message>
    <message>
        <source>For it: %1</source>
        <translation>A favor: %1</translation>
    </message>
    <message>
        <source>Against it: %1</source>
        <translation>En contra: %1</translation>
    </message>
    <message>
        <source>What would decide: %1</source>
        <translation>Qué lo decidiría: %1</translation>
    </message>
</context>
<context>
    <name>padside::TimelineLegend</name>
    <message>
        <source>not seen, and since then</source>
        <translation>sin ver, y desde entonces</translation>
    </message>
    <message>
        <source>new part fitted</source>
        <translation>pieza nueva montada</translation>
    </message>
    <message>
        <source>with photo</source>
        <translation>con foto</translation>
    </message>
    <message>
        <source>corrected</source>
        <translation>corregido</translation>
    </message>
    <message>
        <source>call-out</source>
        <translation>llamada</translation>
    </message>
    <message>
        <source>as found, as left</source>
        <translation>al llegar, al irse</translation>
    </message>
    <message>
        <source>Meaning of the signs</source>
        <translation>Significado de los signos</translation>
    </message>
    <message>
        <source>the same, looked at again</source>
        <translation>lo mismo, mirado otra vez</translation>
    </message>
    <message>
        <source>more close by</source>
        <translation>más muy cerca</translation>
    </message>
    <message>
        <source>refrigerant added</source>
        <translation>refrigerante añadido</translation>
    </message>
    <message>
        <source>recovered or lost</source>
        <translation>recuperado o perdido</translation>
    </message>
    <message>
        <source>what may come: wider is likelier</source>
        <translation>lo que puede venir: más ancho, más probable</translation>
    </message>
    <message>
        <source>spent with 10, 50, 90 %</source>
        <translation>agotado al 10, 50, 90 %</translation>
    </message>
</context>
<context>
    <name>padside::TimelineView</name>
    <message>
        <source>History timeline</source>
        <translation>Línea de tiempo del historial</translation>
    </message>
    <message>
        <source>History timeline, lanes</source>
        <translation>Línea de tiempo del historial, carriles</translation>
    </message>
    <message>
        <source>No visits yet. What is seen at the first visit will stand here.</source>
        <translation>Todavía no hay visitas. Lo que se vea en la primera aparecerá aquí.</translation>
    </message>
</context>
<context>
    <name>padside::TimelineWords</name>
    <message>
        <source>%1, %2</source>
        <comment>part, position</comment>
        <translation>%1, %2</translation>
    </message>
    <message>
        <source>%1 %2</source>
        <comment>numeral and word of a grade</comment>
        <translation>%1 %2</translation>
    </message>
    <message>
        <source>not seen (%1)</source>
        <translation>sin ver (%1)</translation>
    </message>
    <message>
        <source>%1 with %2</source>
        <comment>treatment, product</comment>
        <translation>%1 con %2</translation>
    </message>
    <message>
        <source>new part fitted</source>
        <translation>pieza nueva montada</translation>
    </message>
    <message>
        <source>left as %1</source>
        <translation>se dejó en %1</translation>
    </message>
    <message>
        <source>1 photo</source>
        <translation>1 foto</translation>
    </message>
    <message numerus="yes">
        <source>%n photos</source>
        <translation>
            <numerusform>%n foto</numerusform>
            <numerusform>%n fotos</numerusform>
        </translation>
    </message>
    <message>
        <source>zones seen: %1</source>
        <translation>zonas vistas: %1</translation>
    </message>
    <message>
        <source>not seen: %1</source>
        <translation>sin ver: %1</translation>
    </message>
    <message>
        <source>still open</source>
        <translation>sigue abierta</translation>
    </message>
    <message>
        <source>%1 of %2 %3</source>
        <comment>mass, refrigerant, added or recovered</comment>
        <translation>%1 de %2 %3</translation>
    </message>
    <message>
        <source>%1 because of %2</source>
        <translation>%1 por %2</translation>
    </message>
    <message>
        <source>visit</source>
        <translation>visita</translation>
    </message>
    <message>
        <source>refrigerant</source>
        <translation>refrigerante</translation>
    </message>
    <message>
        <source>%1, %2</source>
        <comment>part, zone</comment>
        <translation>%1, %2</translation>
    </message>
    <message>
        <source>%1: %2: %3.</source>
        <comment>date and reason, where, what</comment>
        <translation>%1: %2: %3.</translation>
    </message>
    <message>
        <source> “%1”</source>
        <comment>a note, after a sentence</comment>
        <translation> «%1»</translation>
    </message>
    <message>
        <source> Corrected: %1</source>
        <translation> Corregido: %1</translation>
    </message>
    <message>
        <source>No visits yet.</source>
        <translation>Todavía no hay visitas.</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <comment>grade, count of zones</comment>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>Visits from %1 to %2: %3. Zones followed: %4. </source>
        <translation>Visitas del %1 al %2: %3. Zonas seguidas: %4. </translation>
    </message>
    <message>
        <source>No grades yet.</source>
        <translation>Todavía no hay grados.</translation>
    </message>
    <message>
        <source>Zones now at each grade: %1.</source>
        <translation>Zonas ahora en cada grado: %1.</translation>
    </message>
    <message>
        <source>last known %1</source>
        <translation>último conocido %1</translation>
    </message>
    <message>
        <source>last known %1 on %2</source>
        <comment>grade, date</comment>
        <translation>último conocido %1 el %2</translation>
    </message>
    <message>
        <source>as before</source>
        <translation>como antes</translation>
    </message>
    <message>
        <source>as on %1</source>
        <translation>como el %1</translation>
    </message>
    <message>
        <source>was %1</source>
        <translation>era %1</translation>
    </message>
    <message>
        <source>was %1 on %2</source>
        <comment>grade, date</comment>
        <translation>era %1 el %2</translation>
    </message>
    <message>
        <source>%1 (%2)</source>
        <comment>treatment, note</comment>
        <translation>%1 (%2)</translation>
    </message>
    <message>
        <source>%1, dry by %2 %3</source>
        <comment>treatment, date, clock</comment>
        <translation>%1, seco para el %2 %3</translation>
    </message>
    <message>
        <source>%1 (%2)</source>
        <comment>grade, zone</comment>
        <translation>%1 (%2)</translation>
    </message>
    <message>
        <source>zones not seen: %1</source>
        <translation>zonas sin ver: %1</translation>
    </message>
    <message>
        <source>new part fitted because of: %1</source>
        <translation>pieza nueva montada por: %1</translation>
    </message>
    <message>
        <source>zones: %1</source>
        <translation>zonas: %1</translation>
    </message>
    <message>
        <source>worst now %1, since %2</source>
        <translation>el peor ahora %1, desde el %2</translation>
    </message>
    <message>
        <source>now %1, since %2</source>
        <translation>ahora %1, desde el %2</translation>
    </message>
    <message>
        <source>last known %1; not seen since %2</source>
        <translation>último conocido %1; sin ver desde el %2</translation>
    </message>
    <message>
        <source>no grade yet</source>
        <translation>sin grado todavía</translation>
    </message>
    <message>
        <source>removed</source>
        <translation>retirada</translation>
    </message>
    <message>
        <source>%1: %2.</source>
        <comment>where, what</comment>
        <translation>%1: %2.</translation>
    </message>
    <message>
        <source>Enter folds or unfolds its lanes.</source>
        <translation>Intro pliega o despliega sus carriles.</translation>
    </message>
    <message>
        <source>Enter shows its photographs through the years.</source>
        <translation>Intro muestra sus fotografías a lo largo de los años.</translation>
    </message>
    <message>
        <source>Another entry lies close by: zoom in to see it.</source>
        <translation>Hay otra anotación muy cerca: acérquese para verla.</translation>
    </message>
    <message>
        <source>%1 more entries lie close by: zoom in to see them.</source>
        <translation>Hay %1 anotaciones más muy cerca: acérquese para verlas.</translation>
    </message>
    <message>
        <source> Flag: %1</source>
        <translation> Aviso: %1</translation>
    </message>
    <message>
        <source> More flags of it: %1.</source>
        <translation> Más avisos suyos: %1.</translation>
    </message>
    <message>
        <source>today</source>
        <translation>hoy</translation>
    </message>
    <message>
        <source>%1, what comes: %2</source>
        <comment>place, a sentence</comment>
        <translation>%1, lo que viene: %2</translation>
    </message>
    <message>
        <source>On %1 likeliest %2 (%3), spent %4.</source>
        <comment>date, grade, chance, chance</comment>
        <translation>El %1 lo más probable %2 (%3), agotado %4.</translation>
    </message>
    <message>
        <source>What may come is told until %1. </source>
        <translation>Lo que puede venir se cuenta hasta el %1. </translation>
    </message>
</context>
<context>
    <name>padside::TrackPage</name>
    <message>
        <source>Track &amp;record</source>
        <translation>&amp;Balance de pronósticos</translation>
    </message>
    <message>
        <source>How long parts &amp;last</source>
        <translation>&amp;Cuánto duran las piezas</translation>
    </message>
    <message>
        <source>Looking back</source>
        <translation>Mirar atrás</translation>
    </message>
</context>
<context>
    <name>padside::TrackPanel</name>
    <message>
        <source>Holding old forecasts against what was found</source>
        <translation>Comparando pronósticos viejos con lo encontrado</translation>
    </message>
    <message>
        <source>Cancelled: nothing was worked out. It begins again when you come back here.</source>
        <translation>Cancelado: no se calculó nada. Empieza de nuevo cuando vuelva aquí.</translation>
    </message>
    <message>
        <source>Old forecasts are being held against what was found …</source>
        <translation>Se comparan los pronósticos viejos con lo encontrado …</translation>
    </message>
    <message>
        <source>Forecasts are kept since %1, each time a visit is closed: %2 by now. They stay as they were said; none was made up afterwards for an older visit. One counts once its day is past and a later visit has settled it.</source>
        <translation>Los pronósticos se guardan desde el %1, cada vez que se cierra una visita: ya son %2. Quedan como se dijeron; ninguno se inventó después para una visita anterior. Uno cuenta cuando su día ha pasado y una visita posterior lo ha resuelto.</translation>
    </message>
    <message>
        <source>When a visit is closed, Padside keeps what it foretells of each zone: the chance that it is spent within half a year, one, two and five years. The visits after that tell whether it was right; half a year after the first closing there is something to see here. Nothing is made up for visits closed before: forecasts that know what came are worth nothing.</source>
        <translation>Cuando se cierra una visita, Padside guarda lo que pronostica de cada zona: la probabilidad de que esté agotada en medio año, uno, dos y cinco años. Las visitas posteriores dicen si acertó; medio año después del primer cierre hay algo que ver aquí. No se inventa nada para visitas cerradas antes: los pronósticos que saben lo que vino no valen nada.</translation>
    </message>
    <message>
        <source>was said</source>
        <translation>se dijo</translation>
    </message>
    <message>
        <source>was found spent</source>
        <translation>se encontró agotado</translation>
    </message>
    <message>
        <source>more than was said</source>
        <translation>más de lo dicho</translation>
    </message>
    <message>
        <source>less than was said</source>
        <translation>menos de lo dicho</translation>
    </message>
    <message>
        <source>said %1, found spent %2 (%3 to %4) of %5</source>
        <translation>dicho %1, encontrado agotado %2 (%3 a %4) de %5</translation>
    </message>
    <message>
        <source>None of these forecasts has been settled yet.</source>
        <translation>Ninguno de estos pronósticos se ha resuelto aún.</translation>
    </message>
    <message>
        <source>A dot for each tenth of the chances, with the number of forecasts; the bars are two standard errors. On the dashed line as many were spent as was said.</source>
        <translation>Un punto por cada décima de probabilidad, con el número de pronósticos; las barras son dos errores típicos. En la línea de trazos se agotaron tantos como se dijo.</translation>
    </message>
    <message>
        <source>Scores of old forecasts</source>
        <translation>Puntuaciones de pronósticos viejos</translation>
    </message>
    <message>
        <source>Forecasts within</source>
        <translation>Pronósticos a</translation>
    </message>
    <message>
        <source>What was said against what came</source>
        <translation>Lo dicho frente a lo ocurrido</translation>
    </message>
    <message>
        <source>The largest misses; Enter opens the unit</source>
        <translation>Los mayores fallos; Intro abre la unidad</translation>
    </message>
    <message>
        <source>None: no settled forecast leaned the wrong way.</source>
        <translation>Ninguno: ningún pronóstico resuelto se inclinó al lado equivocado.</translation>
    </message>
    <message>
        <source>Largest &amp;misses (Enter or a double click opens the unit)</source>
        <translation>Mayores &amp;fallos (Intro o doble clic abre la unidad)</translation>
    </message>
    <message>
        <source>Ranges of dates whose late end is past: %1 of %2 held the day (%3; 80 % is right), %4 were spent before, %5 were not spent yet; %6 can&apos;t be settled, because an end lies between two visits or the zone was renewed in time.</source>
        <translation>Intervalos de fechas cuyo final ya pasó: %1 de %2 contenían el día (%3; lo justo es 80 %), %4 se agotaron antes, %5 aún no estaban agotados; %6 no se pueden resolver, porque un extremo cae entre dos visitas o la zona se renovó a tiempo.</translation>
    </message>
    <message>
        <source>No range of dates is over yet: the late end of each is still to come.</source>
        <translation>Ningún intervalo de fechas ha terminado: el final de cada uno está por venir.</translation>
    </message>
    <message>
        <source>by the early end of the range</source>
        <translation>antes del inicio del intervalo</translation>
    </message>
    <message>
        <source>by its middle</source>
        <translation>antes de su mitad</translation>
    </message>
    <message>
        <source>by its late end</source>
        <translation>antes de su final</translation>
    </message>
    <message>
        <source>%1 %2 of %3 (%4; %5 is right)</source>
        <translation>%1, %2 de %3 (%4; lo justo es %5)</translation>
    </message>
    <message>
        <source>Found spent %1.</source>
        <translation>Encontrados agotados: %1.</translation>
    </message>
    <message>
        <source>Forecasts shown below</source>
        <translation>Pronósticos mostrados abajo</translation>
    </message>
    <message>
        <source>Forecasts &amp;shown below:</source>
        <translation>Pronó&amp;sticos mostrados abajo:</translation>
    </message>
    <message>
        <source>What was sai&amp;d, and what came, within</source>
        <translation>&amp;Lo dicho y lo ocurrido, en</translation>
    </message>
</context>
<context>
    <name>padside::TreatmentPanel</name>
    <message>
        <source>on the whole part</source>
        <translation>en toda la pieza</translation>
    </message>
    <message>
        <source>Product used</source>
        <translation>Producto usado</translation>
    </message>
    <message>
        <source>Maker of the new part</source>
        <translation>Fabricante de la pieza nueva</translation>
    </message>
    <message>
        <source>Model of the new part</source>
        <translation>Modelo de la pieza nueva</translation>
    </message>
    <message>
        <source>Note on the work</source>
        <translation>Nota sobre el trabajo</translation>
    </message>
    <message>
        <source>Cost</source>
        <translation>Coste</translation>
    </message>
    <message>
        <source>Enter this work</source>
        <translation>Anotar este trabajo</translation>
    </message>
    <message>
        <source>Work: %1</source>
        <translation>Trabajo: %1</translation>
    </message>
    <message>
        <source>Dry in how many hours</source>
        <translation>En cuántas horas seca</translation>
    </message>
    <message>
        <source>hours</source>
        <translation>horas</translation>
    </message>
    <message>
        <source>Product</source>
        <translation>Producto</translation>
    </message>
    <message>
        <source>Maker</source>
        <translation>Fabricante</translation>
    </message>
    <message>
        <source>Model</source>
        <translation>Modelo</translation>
    </message>
    <message>
        <source>Note</source>
        <translation>Nota</translation>
    </message>
    <message>
        <source>Dry in</source>
        <translation>Seca en</translation>
    </message>
    <message>
        <source>Keep it dry and the unit off until %1.</source>
        <translation>Manténgalo seco y la unidad apagada hasta %1.</translation>
    </message>
    <message>
        <source>Work on %1</source>
        <translation>Trabajo en %1</translation>
    </message>
    <message>
        <source>Because</source>
        <translation>Motivo</translation>
    </message>
    <message>
        <source>Fit a new part in its place</source>
        <translation>Montar una pieza nueva en su lugar</translation>
    </message>
    <message>
        <source>A cost can&apos;t be below zero. Type what was paid.</source>
        <translation>Un coste no puede ser menor que cero. Escriba lo que se pagó.</translation>
    </message>
    <message>
        <source>Choose what kind of work it was: clean, brush and coat, …</source>
        <translation>Elija qué clase de trabajo fue: limpieza, cepillado y recubrimiento, …</translation>
    </message>
    <message>
        <source>whole part</source>
        <translation>toda la pieza</translation>
    </message>
    <message>
        <source>dry by %1</source>
        <translation>seco para %1</translation>
    </message>
    <message>
        <source>cost %1</source>
        <translation>coste %1</translation>
    </message>
    <message>
        <source>on the whole part:
%1</source>
        <translation>en toda la pieza:
%1</translation>
    </message>
    <message>
        <source>Enter the correction</source>
        <translation>Anotar la corrección</translation>
    </message>
</context>
<context>
    <name>padside::UnitDialog</name>
    <message>
        <source>Tags: %1 to %2.</source>
        <translation>Etiquetas: %1 a %2.</translation>
    </message>
    <message>
        <source>Tags: %1.</source>
        <translation>Etiquetas: %1.</translation>
    </message>
    <message>
        <source>Taken already: %1.</source>
        <translation>Ya ocupadas: %1.</translation>
    </message>
    <message>
        <source>Serial numbers and places come later.</source>
        <translation>Los números de serie y los lugares, más tarde.</translation>
    </message>
    <message>
        <source>New unit</source>
        <translation>Unidad nueva</translation>
    </message>
    <message>
        <source>Unit %1</source>
        <translation>Unidad %1</translation>
    </message>
    <message>
        <source>First site and unit</source>
        <translation>Primer emplazamiento y primera unidad</translation>
    </message>
    <message>
        <source>Add it</source>
        <translation>Añadirla</translation>
    </message>
    <message>
        <source>Name the site, the unit&apos;s tag and its kind: that is enough, the rest can be filled in later. Next you start its first visit.</source>
        <translation>Bastan el nombre del emplazamiento y la etiqueta y la clase de la unidad; lo demás puede completarse después. A continuación empieza su primera visita.</translation>
    </message>
    <message>
        <source>A tag and a kind are enough; the rest can be filled in later. Next you start its first visit.</source>
        <translation>Bastan una etiqueta y una clase; lo demás puede completarse después. A continuación empieza su primera visita.</translation>
    </message>
    <message>
        <source>Keep</source>
        <translation>Conservar</translation>
    </message>
    <message>
        <source>&amp;How many of them</source>
        <translation>C&amp;uántas</translation>
    </message>
    <message>
        <source>Parts it has; &amp;untick what it lacks</source>
        <translation>&amp;Piezas que tiene; desmarque las que no</translation>
    </message>
    <message>
        <source>&amp;All parts are as old as the unit</source>
        <translation>&amp;Todas las piezas son tan antiguas como la unidad</translation>
    </message>
    <message>
        <source>Leave it unticked where some may have been replaced: their age is then unknown.</source>
        <translation>No lo marque si alguna pudo sustituirse: entonces su edad no se conoce.</translation>
    </message>
    <message numerus="yes">
        <source>Add %n units</source>
        <translation>
            <numerusform>Añadir %n unidad</numerusform>
            <numerusform>Añadir %n unidades</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>padside::UnitForm</name>
    <message>
        <source>&amp;Site</source>
        <translation>Empla&amp;zamiento</translation>
    </message>
    <message>
        <source>Its add&amp;ress</source>
        <translation>Su &amp;dirección</translation>
    </message>
    <message>
        <source>&amp;Tag</source>
        <translation>&amp;Etiqueta</translation>
    </message>
    <message>
        <source>What you call it, like RT-1</source>
        <translation>Cómo la llama usted, como RT-1</translation>
    </message>
    <message>
        <source>&amp;Place</source>
        <translation>&amp;Lugar</translation>
    </message>
    <message>
        <source>North wall, roof by the hatch</source>
        <translation>Muro norte, azotea junto a la trampilla</translation>
    </message>
    <message>
        <source>&amp;Maker</source>
        <translation>&amp;Fabricante</translation>
    </message>
    <message>
        <source>Mo&amp;del</source>
        <translation>&amp;Modelo</translation>
    </message>
    <message>
        <source>Seria&amp;l number</source>
        <translation>Número de &amp;serie</translation>
    </message>
    <message>
        <source>Re&amp;frigerant</source>
        <translation>&amp;Refrigerante</translation>
    </message>
    <message>
        <source>As on the nameplate, like R-410A</source>
        <translation>Como en la placa, p. ej. R-410A</translation>
    </message>
    <message>
        <source>&amp;Installed</source>
        <translation>&amp;Instalada</translation>
    </message>
    <message>
        <source>2008-06-14, or only 2008</source>
        <translation>2008-06-14, o solo 2008</translation>
    </message>
    <message>
        <source>N&amp;ote</source>
        <translation>N&amp;ota</translation>
    </message>
    <message>
        <source>Choose</source>
        <translation>Elegir</translation>
    </message>
    <message>
        <source>&amp;Kind</source>
        <translation>&amp;Clase</translation>
    </message>
    <message>
        <source>M&amp;etering</source>
        <translation>E&amp;xpansión</translation>
    </message>
    <message>
        <source>A new name makes a new site</source>
        <translation>Un nombre nuevo crea uno</translation>
    </message>
    <message>
        <source>A unit keeps its kind: its parts and what was found on them stand on it.</source>
        <translation>Una unidad conserva su clase: en ella se apoyan sus piezas y lo que se halló en ellas.</translation>
    </message>
</context>
<context>
    <name>padside::UnitHeader</name>
    <message>
        <source>&amp;Nameplate</source>
        <translation>Placa de &amp;datos</translation>
    </message>
    <message>
        <source>Show the nameplate</source>
        <translation>Mostrar la placa de datos</translation>
    </message>
    <message>
        <source>Show or hide what the nameplate says (Alt+N)</source>
        <translation>Mostrar u ocultar lo que dice la placa de datos (Alt+D)</translation>
    </message>
    <message>
        <source>less than a year old</source>
        <translation>menos de un año</translation>
    </message>
    <message>
        <source>1 year old</source>
        <translation>1 año</translation>
    </message>
    <message numerus="yes">
        <source>%n years old</source>
        <translation>
            <numerusform>%n año</numerusform>
            <numerusform>%n años</numerusform>
        </translation>
    </message>
    <message>
        <source>age unknown</source>
        <translation>edad desconocida</translation>
    </message>
    <message>
        <source>no visit yet</source>
        <translation>ninguna visita todavía</translation>
    </message>
    <message>
        <source>last visit %1, %2</source>
        <comment>date, reason</comment>
        <translation>última visita %1, %2</translation>
    </message>
    <message>
        <source>retired %1</source>
        <translation>retirada el %1</translation>
    </message>
    <message>
        <source>maker</source>
        <translation>fabricante</translation>
    </message>
    <message>
        <source>model</source>
        <translation>modelo</translation>
    </message>
    <message>
        <source>serial number</source>
        <translation>número de serie</translation>
    </message>
    <message>
        <source>installed</source>
        <translation>instalada</translation>
    </message>
    <message>
        <source>metering</source>
        <translation>expansión</translation>
    </message>
    <message>
        <source>Nothing of the nameplate has been written down.</source>
        <translation>No se ha anotado nada de la placa de datos.</translation>
    </message>
</context>
<context>
    <name>padside::UnitImport</name>
    <message>
        <source>Reading %1</source>
        <translation>Leyendo %1</translation>
    </message>
    <message>
        <source>Looking at the rows</source>
        <translation>Examinando las filas</translation>
    </message>
    <message numerus="yes">
        <source>Adding %n units</source>
        <translation>
            <numerusform>Añadiendo %n unidad</numerusform>
            <numerusform>Añadiendo %n unidades</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>padside::UnitListModel</name>
    <message>
        <source>retired · %1</source>
        <translation>retirada · %1</translation>
    </message>
    <message>
        <source>%1, %2</source>
        <translation>%1, %2</translation>
    </message>
    <message>
        <source>, worst grade %1</source>
        <translation>, peor grado %1</translation>
    </message>
    <message>
        <source>, nothing seen yet</source>
        <translation>, nada visto todavía</translation>
    </message>
    <message>
        <source>, visit open</source>
        <translation>, visita abierta</translation>
    </message>
    <message>
        <source>, retired</source>
        <translation>, retirada</translation>
    </message>
</context>
<context>
    <name>padside::UnitListPanel</name>
    <message>
        <source>Find a unit (Ctrl+F)</source>
        <translation>Buscar una unidad (Ctrl+F)</translation>
    </message>
    <message>
        <source>Find a unit</source>
        <translation>Buscar una unidad</translation>
    </message>
    <message>
        <source>Units by site</source>
        <translation>Unidades por emplazamiento</translation>
    </message>
</context>
<context>
    <name>padside::UnitPage</name>
    <message>
        <source>No unit is shown.</source>
        <translation>No se muestra ninguna unidad.</translation>
    </message>
    <message>
        <source>What goes next and why</source>
        <translation>Qué viene ahora y por qué</translation>
    </message>
    <message>
        <source>What goes ne&amp;xt and why</source>
        <translation>Qué vie&amp;ne ahora y por qué</translation>
    </message>
    <message>
        <source>Findings by part and zone</source>
        <translation>Hallazgos por pieza y zona</translation>
    </message>
    <message>
        <source>Findin&amp;gs by part and zone</source>
        <translation>Halla&amp;zgos por pieza y zona</translation>
    </message>
    <message>
        <source>Histor&amp;y</source>
        <translation>His&amp;torial</translation>
    </message>
    <message>
        <source>This unit could not be read.</source>
        <translation>No se pudo leer esta unidad.</translation>
    </message>
    <message>
        <source>What the record holds</source>
        <translation>Lo que contiene el registro</translation>
    </message>
    <message>
        <source>The uni&amp;t, opened</source>
        <translation>La &amp;unidad, abierta</translation>
    </message>
    <message>
        <source>Walls an&amp;d rust</source>
        <translation>Paredes y ó&amp;xido</translation>
    </message>
    <message>
        <source>Refr&amp;igerant</source>
        <translation>Refr&amp;igerante</translation>
    </message>
    <message>
        <source>W&amp;orth</source>
        <translation>&amp;Valor</translation>
    </message>
</context>
<context>
    <name>padside::UnitPlanModel</name>
    <message>
        <source>Row</source>
        <translation>Fila</translation>
    </message>
    <message>
        <source>Tag</source>
        <translation>Etiqueta</translation>
    </message>
    <message>
        <source>Site</source>
        <translation>Emplazamiento</translation>
    </message>
    <message>
        <source>Kind</source>
        <translation>Clase</translation>
    </message>
    <message>
        <source>Place</source>
        <translation>Lugar</translation>
    </message>
    <message>
        <source>Maker</source>
        <translation>Fabricante</translation>
    </message>
    <message>
        <source>Model</source>
        <translation>Modelo</translation>
    </message>
    <message>
        <source>Serial number</source>
        <translation>Número de serie</translation>
    </message>
    <message>
        <source>Refrigerant</source>
        <translation>Refrigerante</translation>
    </message>
    <message>
        <source>Installed</source>
        <translation>Instalada</translation>
    </message>
    <message>
        <source>New unit, new site</source>
        <translation>Unidad nueva, emplazamiento nuevo</translation>
    </message>
    <message>
        <source>New unit</source>
        <translation>Unidad nueva</translation>
    </message>
    <message>
        <source>Skipped. %1</source>
        <translation>Se omite. %1</translation>
    </message>
    <message>
        <source>What will be made, or why not</source>
        <translation>Qué se hará, o por qué no</translation>
    </message>
</context>
<context>
    <name>padside::UnitsPanel</name>
    <message>
        <source>As usual where this computer is</source>
        <translation>Lo usual donde está el equipo</translation>
    </message>
    <message>
        <source>Metric</source>
        <translation>Métrico</translation>
    </message>
    <message>
        <source>US customary</source>
        <translation>Usual en EE. UU.</translation>
    </message>
    <message>
        <source>Units of all quantities</source>
        <translation>Unidades de todas las magnitudes</translation>
    </message>
    <message>
        <source>Unit of %1</source>
        <translation>Unidad de %1</translation>
    </message>
    <message>
        <source>A number typed without a unit is taken to be in the unit shown in its field. What was entered before keeps the unit it was entered in.</source>
        <translation>Un número escrito sin unidad se toma en la unidad que muestra su campo. Lo anotado antes conserva la unidad con que se anotó.</translation>
    </message>
    <message>
        <source>As above: %1</source>
        <translation>Como arriba: %1</translation>
    </message>
    <message>
        <source>All &amp;quantities</source>
        <translation>Todas las ma&amp;gnitudes</translation>
    </message>
</context>
<context>
    <name>padside::ValueWords</name>
    <message>
        <source>(nothing)</source>
        <translation>(nada)</translation>
    </message>
    <message>
        <source>Source: %1.</source>
        <translation>Fuente: %1.</translation>
    </message>
</context>
<context>
    <name>padside::ViewMenu</name>
    <message>
        <source>Vie&amp;w</source>
        <translation>V&amp;er</translation>
    </message>
    <message>
        <source>&amp;Light</source>
        <translation>&amp;Claro</translation>
    </message>
    <message>
        <source>&amp;Dark</source>
        <translation>&amp;Oscuro</translation>
    </message>
    <message>
        <source>Sunli&amp;ght (strong contrast)</source>
        <translation>So&amp;l (contraste fuerte)</translation>
    </message>
    <message>
        <source>Field si&amp;ze (touch and gloves)</source>
        <translation>Ta&amp;maño de campo (tacto y guantes)</translation>
    </message>
</context>
<context>
    <name>padside::VisitActions</name>
    <message>
        <source>Start &amp;spring visit</source>
        <translation>Visita de &amp;primavera</translation>
    </message>
    <message>
        <source>Start a spring visit today</source>
        <translation>Empezar hoy una visita de primavera</translation>
    </message>
    <message>
        <source>Start fa&amp;ll visit</source>
        <translation>Visita de &amp;otoño</translation>
    </message>
    <message>
        <source>Start a fall visit today</source>
        <translation>Empezar hoy una visita de otoño</translation>
    </message>
    <message>
        <source>Start &amp;call-out</source>
        <translation>Visita por &amp;llamada</translation>
    </message>
    <message>
        <source>Start a call-out today</source>
        <translation>Empezar hoy una visita por llamada</translation>
    </message>
    <message>
        <source>&amp;Resume open visit</source>
        <translation>&amp;Seguir la visita abierta</translation>
    </message>
    <message>
        <source>Go on with the visit that is still open</source>
        <translation>Seguir con la visita que aún está abierta</translation>
    </message>
    <message>
        <source>Visit s&amp;ummary</source>
        <translation>Res&amp;umen de la visita</translation>
    </message>
    <message>
        <source>Show the summary of the last visit, for print or PDF</source>
        <translation>Mostrar el resumen de la última visita, para imprimir o PDF</translation>
    </message>
    <message>
        <source>&amp;Resume open visit of %1 (%2)</source>
        <translation>&amp;Seguir la visita abierta del %1 (%2)</translation>
    </message>
    <message>
        <source>Start the first visit:</source>
        <translation>Empiece la primera visita:</translation>
    </message>
</context>
<context>
    <name>padside::VisitPage</name>
    <message>
        <source>last time</source>
        <translation>última vez</translation>
    </message>
    <message>
        <source>Readings</source>
        <translation>Lecturas</translation>
    </message>
    <message>
        <source>Work</source>
        <translation>Trabajo</translation>
    </message>
    <message>
        <source>Refrigerant</source>
        <translation>Carga</translation>
    </message>
    <message>
        <source>Finish</source>
        <translation>Cierre</translation>
    </message>
    <message>
        <source>Beside the zone</source>
        <translation>Junto a la zona</translation>
    </message>
    <message>
        <source>%1 of %2 zones</source>
        <translation>%1 de %2 zonas</translation>
    </message>
    <message>
        <source>zone %1 of %2</source>
        <translation>zona %1 de %2</translation>
    </message>
    <message>
        <source>an amount of refrigerant</source>
        <translation>una cantidad de refrigerante</translation>
    </message>
    <message>
        <source>a note on %1</source>
        <translation>una nota sobre %1</translation>
    </message>
    <message>
        <source>a note on %1, which has no grade yet</source>
        <translation>una nota sobre %1, que aún no tiene grado</translation>
    </message>
    <message>
        <source>wet or dry of %1, which has no grade yet</source>
        <translation>seco o mojado de %1, que aún no tiene grado</translation>
    </message>
    <message>
        <source>N</source>
        <comment>key: not seen</comment>
        <translation>N</translation>
    </message>
    <message>
        <source>D</source>
        <comment>key: dry</comment>
        <translation>S</translation>
    </message>
    <message>
        <source>M</source>
        <comment>key: damp</comment>
        <translation>H</translation>
    </message>
    <message>
        <source>W</source>
        <comment>key: wet</comment>
        <translation>M</translation>
    </message>
    <message>
        <source>S</source>
        <comment>key: same as last time</comment>
        <translation>I</translation>
    </message>
    <message>
        <source>P</source>
        <comment>key: photo</comment>
        <translation>F</translation>
    </message>
    <message>
        <source>T</source>
        <comment>key: note</comment>
        <translation>T</translation>
    </message>
    <message>
        <source>C</source>
        <comment>key: cautions</comment>
        <translation>P</translation>
    </message>
    <message>
        <source>L</source>
        <comment>key: as found or as left</comment>
        <translation>D</translation>
    </message>
    <message>
        <source>Unit</source>
        <translation>Unidad</translation>
    </message>
    <message>
        <source>O</source>
        <comment>key: next zone not looked at</comment>
        <translation>O</translation>
    </message>
    <message>
        <source>1–5 grade   N not seen   D M W dry damp wet   S same as last time   Enter next   O next not looked at   ↑ back   T note   P photo   F3–F6 tabs   Ctrl+Z undo   F1 all keys</source>
        <translation>1–5 grado   N sin ver   S H M seco húmedo mojado   I igual que antes   Intro siguiente   O otra sin mirar   ↑ atrás   T nota   F foto   F3–F6 fichas   Ctrl+Z deshacer   F1 teclas</translation>
    </message>
    <message>
        <source>This visit is closed. To correct an entry, press F6 and say why.</source>
        <translation>Esta visita está cerrada. Para corregir una anotación, pulse F6 y diga por qué.</translation>
    </message>
    <message>
        <source>A grade is a number from 1 to 5; N is for not seen.</source>
        <translation>Un grado es un número del 1 al 5; N es para «sin ver».</translation>
    </message>
    <message>
        <source>This is the last zone. O goes to the next one not looked at, F6 finishes the visit.</source>
        <translation>Es la última zona. O lleva a la siguiente sin revisar; F6 termina la visita.</translation>
    </message>
    <message>
        <source>This is the first zone.</source>
        <translation>Es la primera zona.</translation>
    </message>
    <message>
        <source>Every zone was looked at. F6 finishes the visit.</source>
        <translation>Todas las zonas están revisadas. F6 termina la visita.</translation>
    </message>
    <message>
        <source>look over the coating</source>
        <translation>revisar el revestimiento</translation>
    </message>
    <message>
        <source>B</source>
        <comment>key: where the photo belongs</comment>
        <translation>B</translation>
    </message>
</context>
<context>
    <name>padside::WelcomePage</name>
    <message>
        <source>Welcome</source>
        <translation>Le damos la bienvenida</translation>
    </message>
    <message>
        <source>Padside keeps what you find at each part of an outdoor unit from visit to visit, and says what is likely to fail next. This file has no units yet. Four ways to begin:</source>
        <translation>Padside guarda de visita en visita lo que usted halla en cada pieza de una unidad exterior y dice qué es probable que falle después. Este archivo aún no tiene unidades. Cuatro maneras de empezar:</translation>
    </message>
    <message>
        <source>&amp;Add your first site and unit…</source>
        <translation>&amp;Añadir el primer emplazamiento y la primera unidad…</translation>
    </message>
    <message>
        <source>Where it stands, what it is called and what kind it is; everything else can be filled in later. Then its first visit can begin.</source>
        <translation>Dónde está, cómo se llama y de qué clase es; todo lo demás puede completarse después. Entonces puede empezar su primera visita.</translation>
    </message>
    <message>
        <source>&amp;Bring in a list of units…</source>
        <translation>&amp;Traer una lista de unidades…</translation>
    </message>
    <message>
        <source>A table saved as CSV, one unit a row. You see what each row becomes before anything is written.</source>
        <translation>Una tabla guardada como CSV, una unidad por fila. Verá en qué se convierte cada fila antes de que se escriba nada.</translation>
    </message>
    <message>
        <source>&amp;Look at a sample</source>
        <translation>&amp;Ver una muestra</translation>
    </message>
    <message>
        <source>Fourteen units of an invented harbour town with eight years of visits, in a file of its own beside yours: try everything there, nothing of yours changes.</source>
        <translation>Catorce unidades de un pueblo portuario inventado con ocho años de visitas, en un archivo propio junto al suyo: pruébelo todo allí, nada de lo suyo cambia.</translation>
    </message>
    <message>
        <source>&amp;Open a file…</source>
        <translation>A&amp;brir un archivo…</translation>
    </message>
    <message>
        <source>A record that is already on this computer.</source>
        <translation>Un registro que ya está en este ordenador.</translation>
    </message>
</context>
<context>
    <name>padside::WetnessChoice</name>
    <message>
        <source>D</source>
        <comment>key: dry</comment>
        <translation>S</translation>
    </message>
    <message>
        <source>M</source>
        <comment>key: damp</comment>
        <translation>H</translation>
    </message>
    <message>
        <source>W</source>
        <comment>key: wet</comment>
        <translation>M</translation>
    </message>
</context>
<context>
    <name>padside::WindowProgram</name>
    <message>
        <source>Open a record file</source>
        <translation>Abrir un archivo de registro</translation>
    </message>
    <message>
        <source>Padside records (*.padside);;All files (*)</source>
        <translation>Registros de Padside (*.padside);;Todos los archivos (*)</translation>
    </message>
    <message>
        <source>Back up to a new file</source>
        <translation>Copia de seguridad en un archivo nuevo</translation>
    </message>
    <message>
        <source>Padside records (*.padside)</source>
        <translation>Registros de Padside (*.padside)</translation>
    </message>
    <message>
        <source>Backup to %1</source>
        <translation>Copia de seguridad en %1</translation>
    </message>
    <message>
        <source>%1, the file used last, was not opened. Shown here is %2.</source>
        <translation>%1, el último archivo usado, no se abrió. Aquí se muestra %2.</translation>
    </message>
    <message>
        <source>%1, the file used last, is not there any more: it was moved, renamed or deleted, or its disk is not connected. Open it where it is now with Ctrl+O. Shown here is %2.</source>
        <translation>%1, el último archivo usado, ya no está: se movió, se renombró o se borró, o su disco no está conectado. Ábralo donde esté ahora con Ctrl+O. Aquí se muestra %2.</translation>
    </message>
    <message>
        <source>

If you are sure that no Padside there has it open any more, you can open it all the same.</source>
        <translation>

Si está seguro de que allí ningún Padside lo tiene abierto, puede abrirlo de todos modos.</translation>
    </message>
    <message>
        <source>Open it all the same</source>
        <translation>Abrirlo de todos modos</translation>
    </message>
    <message>
        <source>Leave it</source>
        <translation>Dejarlo</translation>
    </message>
    <message>
        <source>Making the sample</source>
        <translation>Preparar la muestra</translation>
    </message>
    <message>
        <source>This is the sample; change in it what you like. Your own file, %1, comes back with File, Open, or when Padside starts again.</source>
        <translation>Esta es la muestra; cambie en ella lo que quiera. Su propio archivo, %1, vuelve con Archivo, Abrir, o al iniciar Padside de nuevo.</translation>
    </message>
</context>
<context>
    <name>padside::WorkLine</name>
    <message>
        <source>Cancel</source>
        <translation>Cancelar</translation>
    </message>
</context>
<context>
    <name>padside::WorthComparison</name>
    <message>
        <source>Carry on or replace: not reckoned yet.</source>
        <translation>Continuar o reemplazar: todavía sin calcular.</translation>
    </message>
    <message>
        <source>Of the repairs to be expected, most is for this part: %1.</source>
        <translation>De las reparaciones previsibles, la mayor parte es para esta pieza: %1.</translation>
    </message>
    <message>
        <source>No single assumption would turn it, even changed fourfold.</source>
        <translation>Ningún supuesto por sí solo lo cambiaría, ni siquiera cuadruplicado.</translation>
    </message>
    <message>
        <source>It would turn with any one of these:</source>
        <translation>Cambiaría con cualquiera de estos:</translation>
    </message>
    <message>
        <source>Needed: %1.</source>
        <translation>Hace falta: %1.</translation>
    </message>
    <message>
        <source>Not given: %1.</source>
        <translation>Sin indicar: %1.</translation>
    </message>
    <message>
        <source>Failures not counted, for want of their costs: %1.</source>
        <translation>Fallos no contados, por falta de sus costes: %1.</translation>
    </message>
    <message>
        <source>Carry on, a year</source>
        <translation>Continuar, al año</translation>
    </message>
    <message>
        <source>Replace, a year</source>
        <translation>Reemplazar, al año</translation>
    </message>
</context>
<context>
    <name>padside::WorthFiguresForm</name>
    <message>
        <source>This unit</source>
        <translation>Esta unidad</translation>
    </message>
    <message>
        <source>All units</source>
        <translation>Todas las unidades</translation>
    </message>
    <message>
        <source>%1, nameplate</source>
        <translation>%1, placa</translation>
    </message>
    <message>
        <source>not given</source>
        <translation>sin indicar</translation>
    </message>
    <message>
        <source>%1, ours</source>
        <translation>%1, nuestro</translation>
    </message>
</context>
<context>
    <name>padside::WorthLog</name>
    <message>
        <source>change of costs</source>
        <translation>cambio de costes</translation>
    </message>
    <message>
        <source>change of an assumption</source>
        <translation>cambio de un supuesto</translation>
    </message>
</context>
<context>
    <name>padside::WorthPanel</name>
    <message>
        <source>Carry on or replace</source>
        <translation>Continuar o reemplazar</translation>
    </message>
</context>
<context>
    <name>padside::WorthParts</name>
    <message>
        <source>Costs of this p&amp;art…</source>
        <translation>C&amp;ostes de esta pieza…</translation>
    </message>
    <message>
        <source>What can be done about each part</source>
        <translation>Qué se puede hacer con cada pieza</translation>
    </message>
    <message>
        <source>Part, choice</source>
        <translation>Pieza, opción</translation>
    </message>
    <message>
        <source>1 year</source>
        <translation>1 año</translation>
    </message>
    <message>
        <source>Cost</source>
        <translation>Coste</translation>
    </message>
    <message>
        <source>Years gained</source>
        <translation>Años ganados</translation>
    </message>
    <message>
        <source>Why</source>
        <translation>Por qué</translation>
    </message>
    <message>
        <source>Chance that one of its zones is spent within a year</source>
        <translation>Probabilidad de que una de sus zonas se agote en un año</translation>
    </message>
    <message>
        <source>Expected over the years compared, in today&apos;s money</source>
        <translation>Esperado durante los años comparados, en dinero de hoy</translation>
    </message>
    <message>
        <source>Until it is spent, against leaving it</source>
        <translation>Hasta que se agote, frente a dejarla</translation>
    </message>
    <message>
        <source>Once it is gone, the unit is normally given up.</source>
        <translation>Una vez perdida, normalmente se abandona la unidad.</translation>
    </message>
    <message>
        <source>One failure comes to about %1.</source>
        <translation>Un fallo supone unos %1.</translation>
    </message>
    <message>
        <source>Needed: %1.</source>
        <translation>Hace falta: %1.</translation>
    </message>
    <message>
        <source>Not given, and counted as nothing: %1.</source>
        <translation>Sin indicar, y contado como nada: %1.</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <comment>treat it now: brush and coat</comment>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>not known</source>
        <translation>no se sabe</translation>
    </message>
    <message>
        <source>Worst: %1</source>
        <translation>Lo peor: %1</translation>
    </message>
    <message>
        <source>%1. %2</source>
        <comment>worst zone; what is cheapest or gains most</comment>
        <translation>%1. %2</translation>
    </message>
    <message>
        <source>Nothing is fitted that decays.</source>
        <translation>No hay montado nada que se deteriore.</translation>
    </message>
</context>
<context>
    <name>padside::ZoneList</name>
    <message>
        <source>Zones of the unit</source>
        <translation>Zonas de la unidad</translation>
    </message>
    <message>
        <source> (new today)</source>
        <translation> (nuevo hoy)</translation>
    </message>
    <message>
        <source>not looked at yet</source>
        <translation>aún sin mirar</translation>
    </message>
    <message>
        <source>never seen</source>
        <translation>nunca vista</translation>
    </message>
    <message>
        <source>%1, %2: today %3; last time %4</source>
        <translation>%1, %2: hoy %3; última vez %4</translation>
    </message>
    <message>
        <source>Today: %1
Last time: %2</source>
        <translation>Hoy: %1
Última vez: %2</translation>
    </message>
</context>
<context>
    <name>padside::ZonePanel</name>
    <message>
        <source>As found</source>
        <translation>Al llegar</translation>
    </message>
    <message>
        <source>As left  L</source>
        <translation>Al irse  D</translation>
    </message>
    <message>
        <source>Add photo  P</source>
        <translation>Añadir foto  F</translation>
    </message>
    <message>
        <source>Same as last time  S</source>
        <translation>Igual que la última vez  I</translation>
    </message>
    <message>
        <source>The zone at hand</source>
        <translation>La zona presente</translation>
    </message>
    <message>
        <source>As left</source>
        <translation>Al irse</translation>
    </message>
    <message>
        <source>Same as last time</source>
        <translation>Igual que la última vez</translation>
    </message>
    <message>
        <source>Add a photo</source>
        <translation>Añadir una foto</translation>
    </message>
    <message>
        <source>Note on this zone</source>
        <translation>Nota sobre esta zona</translation>
    </message>
    <message>
        <source>Note (T to write, Esc when done)</source>
        <translation>Nota (T para escribir, Esc al terminar)</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>This unit has no parts in the record.</source>
        <translation>Esta unidad no tiene piezas en el registro.</translation>
    </message>
    <message>
        <source>Last seen %1:  %2</source>
        <translation>Vista por última vez el %1:  %2</translation>
    </message>
    <message>
        <source>It was %1.</source>
        <translation>Estaba %1.</translation>
    </message>
    <message>
        <source>“%1”</source>
        <translation>«%1»</translation>
    </message>
    <message>
        <source>Never seen before</source>
        <translation>Nunca vista antes</translation>
    </message>
    <message>
        <source>%1: %2.</source>
        <translation>%1: %2.</translation>
    </message>
    <message>
        <source>The photo file is missing.</source>
        <translation>Falta el archivo de la foto.</translation>
    </message>
    <message>
        <source>No earlier photo</source>
        <translation>Ninguna foto anterior</translation>
    </message>
    <message>
        <source>Photo of %1</source>
        <translation>Foto del %1</translation>
    </message>
    <message>
        <source>This visit, as found</source>
        <translation>Esta visita, al llegar</translation>
    </message>
    <message>
        <source>This visit, as left</source>
        <translation>Esta visita, al irse</translation>
    </message>
    <message>
        <source>Drop or paste a photo here, or press P</source>
        <translation>Suelte o pegue aquí una foto, o pulse F</translation>
    </message>
    <message>
        <source>No photo of this visit</source>
        <translation>Ninguna foto de esta visita</translation>
    </message>
    <message>
        <source>The newest photo of this visit</source>
        <translation>La foto más reciente de esta visita</translation>
    </message>
    <message>
        <source>Same as last time: %1  S</source>
        <translation>Igual que la última vez: %1  I</translation>
    </message>
    <message>
        <source>No work was entered on this zone, so there is nothing as left to grade. Enter the work first: F4.</source>
        <translation>En esta zona no se ha anotado ningún trabajo, así que no hay estado al irse que graduar. Anote antes el trabajo: F4.</translation>
    </message>
    <message>
        <source>This zone was never seen before, so there is no grade of last time. Give one: 1 to 5.</source>
        <translation>Esta zona no se había visto nunca, así que no hay grado de la última vez. Dé uno: del 1 al 5.</translation>
    </message>
</context>
</TS>
