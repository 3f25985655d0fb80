<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<TS version="2.1" language="es" sourcelanguage="en">
  <context>
    <name>chargebench</name>
    <message>
      <source>  (and {count} more)</source>
      <translation>  (y {count} más)</translation>
    </message>
    <message>
      <source> (person, set_at)</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source> 1 conflict: see the flags.</source>
      <translation> 1 conflicto: vea los avisos.</translation>
    </message>
    <message>
      <source> Above its critical temperature of {critical} it does not boil.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source> Already there and replaced: {there}.</source>
      <translation> Ya existe y se reemplaza: {there}.</translation>
    </message>
    <message>
      <source> and </source>
      <translation> y </translation>
    </message>
    <message>
      <source> at the coldest part</source>
      <translation> en la parte más fría</translation>
    </message>
    <message>
      <source> at {coldest}</source>
      <translation> a {coldest}</translation>
    </message>
    <message>
      <source> Filled all the same: {reason}</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source> It needs a hose.</source>
      <translation> Necesita una manguera.</translation>
    </message>
    <message>
      <source> Judged by {rule_set}.</source>
      <translation> Juzgado según {rule_set}.</translation>
    </message>
    <message>
      <source> None is set yet; set one first.</source>
      <translation> Aún no hay ninguna; fije una primero.</translation>
    </message>
    <message>
      <source> on </source>
      <translation> en </translation>
    </message>
    <message>
      <source> On the new bench's computer choose the file at the first start. Letter {letter} is then given, which is recorded; use the file on one computer only.</source>
      <translation> En el equipo del nuevo banco elija el archivo en el primer inicio. La letra {letter} queda entonces asignada, lo que se registra; use el archivo en un solo equipo.</translation>
    </message>
    <message>
      <source> or </source>
      <translation> o </translation>
    </message>
    <message>
      <source> Take in the file with them first, or hand over again from entry {missing}.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source> The gauge did not move: make sure it is not at the end of its range.</source>
      <translation> El manómetro no se movió: asegúrese de que no esté al final de su rango.</translation>
    </message>
    <message>
      <source> This figure is {marks_said}.</source>
      <translation> Esta cifra está {marks_said}.</translation>
    </message>
    <message>
      <source> What was there before is kept as {aside}.</source>
      <translation> Lo que había antes se conserva como {aside}.</translation>
    </message>
    <message>
      <source> {count} conflicts: see the flags.</source>
      <translation> {count} conflictos: vea los avisos.</translation>
    </message>
    <message>
      <source> {enough} would do.</source>
      <translation> {enough} bastarían.</translation>
    </message>
    <message>
      <source> {known} entries were here already.</source>
      <translation> {known} asientos ya estaban aquí.</translation>
    </message>
    <message>
      <source> · closed</source>
      <translation> · cerrado</translation>
    </message>
    <message>
      <source>"Hg vac</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>"paper"</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>#7fd0d6</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>#e9eeea</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>#f1f2ec</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>#fdfdfa</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>#ff9d94</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>#ffb066</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>#ffffff</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>%(asctime)s %(message)s</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>&amp;Add</source>
      <translation>&amp;Añadir</translation>
    </message>
    <message>
      <source>&amp;Add a file…</source>
      <translation>&amp;Añadir un archivo…</translation>
    </message>
    <message>
      <source>&amp;Back</source>
      <translation>&amp;Volver</translation>
    </message>
    <message>
      <source>&amp;Back up</source>
      <translation>Copia de se&amp;guridad</translation>
    </message>
    <message>
      <source>&amp;Cancel</source>
      <translation>&amp;Cancelar</translation>
    </message>
    <message>
      <source>&amp;Chart</source>
      <translation>&amp;Gráfico</translation>
    </message>
    <message>
      <source>&amp;Clear</source>
      <translation>&amp;Limpiar</translation>
    </message>
    <message>
      <source>&amp;Close</source>
      <translation>&amp;Cerrar</translation>
    </message>
    <message>
      <source>&amp;Cylinders</source>
      <translation>&amp;Cilindros</translation>
    </message>
    <message>
      <source>&amp;Decant</source>
      <translation>&amp;Trasvasar</translation>
    </message>
    <message>
      <source>&amp;Decimal mark</source>
      <translation>Signo &amp;decimal</translation>
    </message>
    <message>
      <source>&amp;Due dates</source>
      <translation>&amp;Vencimientos</translation>
    </message>
    <message>
      <source>&amp;Equipment</source>
      <translation>&amp;Equipo</translation>
    </message>
    <message>
      <source>&amp;Find</source>
      <translation>&amp;Buscar</translation>
    </message>
    <message>
      <source>&amp;Go back to this backup</source>
      <translation>&amp;Volver a esta copia</translation>
    </message>
    <message>
      <source>&amp;Instruments</source>
      <translation>&amp;Instrumentos</translation>
    </message>
    <message>
      <source>&amp;Isolated now</source>
      <translation>A&amp;islado ahora</translation>
    </message>
    <message>
      <source>&amp;Join a shop…</source>
      <translation>&amp;Unirse a un taller…</translation>
    </message>
    <message>
      <source>&amp;Keep records here</source>
      <translation>&amp;Llevar registros aquí</translation>
    </message>
    <message>
      <source>&amp;Leak rates</source>
      <translation>&amp;Tasas de fuga</translation>
    </message>
    <message>
      <source>&amp;Look at the sample</source>
      <translation>&amp;Ver la muestra</translation>
    </message>
    <message>
      <source>&amp;Make equipment</source>
      <translation>&amp;Crear equipo</translation>
    </message>
    <message>
      <source>&amp;Make your shop</source>
      <translation>&amp;Crear su taller</translation>
    </message>
    <message>
      <source>&amp;New</source>
      <translation>&amp;Nuevo</translation>
    </message>
    <message>
      <source>&amp;New cylinder</source>
      <translation>&amp;Nuevo cilindro</translation>
    </message>
    <message>
      <source>&amp;New job</source>
      <translation>&amp;Nuevo trabajo</translation>
    </message>
    <message>
      <source>&amp;New one</source>
      <translation>&amp;Nueva</translation>
    </message>
    <message>
      <source>&amp;New {kind}</source>
      <translation>&amp;Nuevo: {kind}</translation>
    </message>
    <message>
      <source>&amp;Passphrase…</source>
      <translation>&amp;Contraseña…</translation>
    </message>
    <message>
      <source>&amp;Paste</source>
      <translation>&amp;Pegar</translation>
    </message>
    <message>
      <source>&amp;Period</source>
      <translation>&amp;Período</translation>
    </message>
    <message>
      <source>&amp;PIN or passphrase</source>
      <translation>&amp;PIN o contraseña</translation>
    </message>
    <message>
      <source>&amp;Port at this bench</source>
      <translation>&amp;Puerto en este banco</translation>
    </message>
    <message>
      <source>&amp;Present one</source>
      <translation>&amp;Actual</translation>
    </message>
    <message>
      <source>&amp;Print…</source>
      <translation>&amp;Imprimir…</translation>
    </message>
    <message>
      <source>&amp;Reading</source>
      <translation>&amp;Lectura</translation>
    </message>
    <message>
      <source>&amp;Reason of the visit</source>
      <translation>&amp;Motivo de la visita</translation>
    </message>
    <message>
      <source>&amp;Register</source>
      <translation>Catá&amp;logo</translation>
    </message>
    <message>
      <source>&amp;Rescue into a new file…</source>
      <translation>&amp;Rescatar en un archivo nuevo…</translation>
    </message>
    <message>
      <source>&amp;Save</source>
      <translation>&amp;Guardar</translation>
    </message>
    <message>
      <source>&amp;Save as PDF…</source>
      <translation>&amp;Guardar como PDF…</translation>
    </message>
    <message>
      <source>&amp;Set</source>
      <translation>&amp;Fijar</translation>
    </message>
    <message>
      <source>&amp;Settled</source>
      <translation>&amp;Resuelto</translation>
    </message>
    <message>
      <source>&amp;Start job</source>
      <translation>&amp;Iniciar trabajo</translation>
    </message>
    <message>
      <source>&amp;Table</source>
      <translation>&amp;Tabla</translation>
    </message>
    <message>
      <source>&amp;Take in…</source>
      <translation>Incorp&amp;orar…</translation>
    </message>
    <message>
      <source>&amp;Take the line away</source>
      <translation>&amp;Quitar la línea</translation>
    </message>
    <message>
      <source>&amp;Try again</source>
      <translation>&amp;Intentar de nuevo</translation>
    </message>
    <message>
      <source>&amp;Two things</source>
      <translation>&amp;Dos cosas</translation>
    </message>
    <message>
      <source>&amp;Unaccounted</source>
      <translation>Sin &amp;justificar</translation>
    </message>
    <message>
      <source>&amp;Unit, if it sends none</source>
      <translation>&amp;Unidad, si no la envía</translation>
    </message>
    <message>
      <source>&amp;Unlock</source>
      <translation>&amp;Desbloquear</translation>
    </message>
    <message>
      <source>&amp;Verify</source>
      <translation>&amp;Verificar</translation>
    </message>
    <message>
      <source>&amp;Weigh</source>
      <translation>&amp;Pesar</translation>
    </message>
    <message>
      <source>&amp;What</source>
      <translation>&amp;Qué</translation>
    </message>
    <message>
      <source>&amp;What is known</source>
      <translation>&amp;Lo que se sabe</translation>
    </message>
    <message>
      <source>&amp;What it shows</source>
      <translation>&amp;Qué muestra</translation>
    </message>
    <message>
      <source>&amp;Work in the rescued file</source>
      <translation>&amp;Trabajar en el archivo rescatado</translation>
    </message>
    <message>
      <source>&amp;Write it</source>
      <translation>&amp;Escribir</translation>
    </message>
    <message>
      <source>*.jpg *.jpeg *.png *.webp *.tif *.tiff *.gif</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>*.json</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>*.toml</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>+ speaks for it, − against it, · tells nothing. Arrow keys give the reason.</source>
      <translation>+ habla a favor, − en contra, · no dice nada. Las flechas dan el motivo.</translation>
    </message>
    <message>
      <source>, and {count} more such pairs</source>
      <translation>, y {count} pares más así</translation>
    </message>
    <message>
      <source>, at the earliest {earliest}</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>, but {would} would have seen a steady one of this size: look for one that opens only running, hot or cold</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>, entries {map}</source>
      <translation>, asientos {map}</translation>
    </message>
    <message>
      <source>, from surfaces</source>
      <translation>, de superficies</translation>
    </message>
    <message>
      <source>, last {reading} after {at}</source>
      <translation>, última {reading} a los {at}</translation>
    </message>
    <message>
      <source>, last {text} after {minutes:g} min</source>
      <translation>, última {text} a los {minutes:g} min</translation>
    </message>
    <message>
      <source>, limit {value_of}</source>
      <translation>, límite {value_of}</translation>
    </message>
    <message>
      <source>, not firm yet</source>
      <translation>, aún no firme</translation>
    </message>
    <message>
      <source>, not refillable</source>
      <translation>, no recargable</translation>
    </message>
    <message>
      <source>, not yet firm</source>
      <translation>, aún no firme</translation>
    </message>
    <message>
      <source>, only {chosen}</source>
      <translation>, solo {chosen}</translation>
    </message>
    <message>
      <source>, recorded {when}</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>, reversed</source>
      <translation>, anulado</translation>
    </message>
    <message>
      <source>, such as “{such_as}”</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>, {from_backups} of them from backups</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>-12.5 °C or 9 F</source>
      <translation>-12.5 °C o 9 F</translation>
    </message>
    <message>
      <source>-4 inHg</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>0 bar(g)</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>0 psig</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>0.1 bar(g)</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>0.5 bar(g)</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>0.5 psig</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>1 day</source>
      <translation>1 día</translation>
    </message>
    <message>
      <source>1 maker's figure</source>
      <translation>1 valor del fabricante</translation>
    </message>
    <message>
      <source>1 min</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>1 of 2</source>
      <translation>1 de 2</translation>
    </message>
    <message>
      <source>1 reading</source>
      <translation>1 lectura</translation>
    </message>
    <message>
      <source>1/4 in SAE flare, left-hand</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>10 min</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>10 psig</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>10.180 kg</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>1013 hPa or 29.92 inHg</source>
      <translation>1013 hPa o 29.92 inHg</translation>
    </message>
    <message>
      <source>12 m² or 130 ft²</source>
      <translation>12 m² o 130 ft²</translation>
    </message>
    <message>
      <source>12 psig</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>12.430 kg</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>12.5 L or 0.4 ft³</source>
      <translation>12.5 L o 0.4 ft³</translation>
    </message>
    <message>
      <source>13.5 kg</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>14.9 kg</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>15 psig</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>150 psig</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>160 psig</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>2 bar</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>2 calculated from components</source>
      <translation>2 calculado de los componentes</translation>
    </message>
    <message>
      <source>20 min</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>20 min or 1 h 30 min</source>
      <translation>20 min o 1 h 30 min</translation>
    </message>
    <message>
      <source>25 bar(g)</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>26.2 lb</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>29 psi</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>3 actual weight</source>
      <translation>3 peso real</translation>
    </message>
    <message>
      <source>3 g/yr</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>3 g/yr or 0.1 oz/yr</source>
      <translation>3 g/yr o 0.1 oz/yr</translation>
    </message>
    <message>
      <source>3 or 2.5</source>
      <translation>3 o 2.5</translation>
    </message>
    <message>
      <source>3.0 oz or 85 g</source>
      <translation>3.0 oz u 85 g</translation>
    </message>
    <message>
      <source>3.9 oz, 1 lb 2.5 oz or 110 g</source>
      <translation>3.9 oz, 1 lb 2.5 oz o 110 g</translation>
    </message>
    <message>
      <source>30 min</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>300 psig</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>320 psig</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>350 micron</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>36 in</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>36 in, 1/4 in or 1.5 m</source>
      <translation>36 in, 1/4 in o 1.5 m</translation>
    </message>
    <message>
      <source>4 established range</source>
      <translation>4 rango establecido</translation>
    </message>
    <message>
      <source>4.8 mm or 3/16 in</source>
      <translation>4.8 mm o 3/16 in</translation>
    </message>
    <message>
      <source>40 min</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>400 psig</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>420 micron</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>4312.5 g or 9 lb 8.1 oz</source>
      <translation>4312.5 g o 9 lb 8.1 oz</translation>
    </message>
    <message>
      <source>45 min</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>5 g/yr</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>5 K or 9 F</source>
      <translation>5 K o 9 F</translation>
    </message>
    <message>
      <source>5 kg</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>5 min</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>6 K, or 5 to 8 K</source>
      <translation>6 K, o 5 a 8 K</translation>
    </message>
    <message>
      <source>68 psig, 4.7 bar(g), -10 inHg, 500 micron or 66 Pa</source>
      <translation>68 psig, 4.7 bar(g), -10 inHg, 500 micron o 66 Pa</translation>
    </message>
    <message>
      <source>7.83 kg</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>7.85 kg or 17 lb 5 oz</source>
      <translation>7.85 kg o 17 lb 5 oz</translation>
    </message>
    <message>
      <source>8.6 kg</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>80 % at 25 °C</source>
      <translation>80 % a 25 °C</translation>
    </message>
    <message>
      <source>9.125 kg</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>9.210 kg</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>90 psig</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>9600 8N1, stable ST</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>; did you mean “{near}”?</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>; gross at most {gross_limit}</source>
      <translation>; bruto máximo {gross_limit}</translation>
    </message>
    <message>
      <source>; it has not been searched for</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>; known are: {known}.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>; no search made so far could rule it out</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>; signing asks for the passphrase</source>
      <translation>; firmar pide la contraseña</translation>
    </message>
    <message>
      <source>; “{typed}” is a unit of {known}</source>
      <translation>; “{typed}” es una unidad de {known}</translation>
    </message>
    <message>
      <source>; “{typed}” is not a unit known here</source>
      <translation>; “{typed}” no es una unidad conocida aquí</translation>
    </message>
    <message>
      <source>&lt;br&gt;</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>&lt;s&gt;Entry {was_number}, {kind_words} by {named}, {happened_at}&lt;/s&gt; &lt;b&gt;reversed&lt;/b&gt; by entry {reversal_number}, {named_2}, {happened_at_2}: {reason}</source>
      <translation>&lt;s&gt;Asiento {was_number}, {kind_words} de {named}, {happened_at}&lt;/s&gt; &lt;b&gt;anulado&lt;/b&gt; por el asiento {reversal_number}, {named_2}, {happened_at_2}: {reason}</translation>
    </message>
    <message>
      <source>[area]</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>[current]</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>[density]</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>[Errno</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>[length]</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>[mass]</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>[mass] / [substance]</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>[mass] / [time]</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>[mass] / [volume]</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>[pressure]</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>[pressure] * [volume] / [time]</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>[pressure] / [time]</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>[temperature]</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>[time]</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>[volume]</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>a 36 in hose of 4.8 mm bore, for none is given at the weigh-in</source>
      <translation>una manguera de 36 in y 4.8 mm, pues no se dio ninguna en la carga por peso</translation>
    </message>
    <message>
      <source>a bench with entries has its shop</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>A blocked condenser would raise it.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>A box at its set point may still run too long to hold it.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>A chain of hashes shows that what is recorded was not changed afterwards; it can not show that what was typed was true.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>a charge</source>
      <translation>una carga</translation>
    </message>
    <message>
      <source>a charge has at least one line</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>A checked scale in good order is under the recovery cylinder.</source>
      <translation>Hay una balanza revisada y en buen estado bajo el cilindro de recuperación.</translation>
    </message>
    <message>
      <source>a cold spot in the liquid line or drier</source>
      <translation>un punto frío en la línea de líquido o el secador</translation>
    </message>
    <message>
      <source>A cold spot is where the liquid is throttled.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>A compressor that leaves is evacuated first; its shell is heated electrically if at all.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>a current</source>
      <translation>una corriente</translation>
    </message>
    <message>
      <source>A cylinder comes in: what it weighs now and who it came from.</source>
      <translation>Entra un cilindro: cuánto pesa ahora y de quién vino.</translation>
    </message>
    <message>
      <source>A cylinder's content leaves the shop.</source>
      <translation>El contenido de un cilindro sale del taller.</translation>
    </message>
    <message>
      <source>a date such as 2024-07-15</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>A decision is on two different ids, under the id of their pair.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>A decision on two ids of one register was expected.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>A dirty condenser shifts temperatures, not much the subcooling.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>A dry powder or carbon dioxide extinguisher stands within reach.</source>
      <translation>Hay un extintor de polvo seco o dióxido de carbono al alcance.</translation>
    </message>
    <message>
      <source>a floor area</source>
      <translation>una superficie</translation>
    </message>
    <message>
      <source>a form with register picks needs an open shop</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>A further bench is begun as a file. A bench that works on the server itself is let in by the shop's owner with: chargebench join-shop.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>A gas detector made for this gas is on where the gas would gather, checked in clean air, its alarm at the exposure limit and not at the flammable one.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>A gas detector that can not itself ignite the gas is on at floor height, checked in clean air, its alarm no higher than the share of the lower limit the rule set names.</source>
      <translation>Un detector de gas que no puede encender el gas está activo a ras del piso, probado en aire limpio, con alarma no mayor que la parte del límite inferior que nombra el reglamento.</translation>
    </message>
    <message>
      <source>a height</source>
      <translation>una altura</translation>
    </message>
    <message>
      <source>a height of release</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>A job</source>
      <translation>Un trabajo</translation>
    </message>
    <message>
      <source>A job is opened on an equipment.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>A job is opened on an equipment; choose one.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>A job number that begins with {bench}- was expected.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>A leak below {leak:.2g} mbar L/s of nitrogen can not be excluded.</source>
      <translation>Una fuga menor de {leak:.2g} mbar L/s de nitrógeno no puede excluirse.</translation>
    </message>
    <message>
      <source>A leak below {leak} can not be excluded</source>
      <translation>Una fuga menor de {leak} no puede excluirse</translation>
    </message>
    <message>
      <source>A leak below {micron:.1f} micron/min ({pascal:.2f} Pa/min) can not be excluded</source>
      <translation>Una fuga menor de {micron:.1f} micron/min ({pascal:.2f} Pa/min) no puede excluirse</translation>
    </message>
    <message>
      <source>A leak is possible</source>
      <translation>Es posible una fuga</translation>
    </message>
    <message>
      <source>a length</source>
      <translation>una longitud</translation>
    </message>
    <message>
      <source>a lifted valve seldom reseats</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>A line of a chain file has at most {line_most} bytes and {parts_most} brackets.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>a list</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>a loss per year</source>
      <translation>una pérdida al año</translation>
    </message>
    <message>
      <source>a lower flammable limit</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>a mass</source>
      <translation>una masa</translation>
    </message>
    <message>
      <source>a mixture with {held}</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>A new bench begins with every entry; name no other bench.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>A non-refillable cylinder is never filled again.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>a number</source>
      <translation>un número</translation>
    </message>
    <message>
      <source>A number without a unit known here; say in the settings which unit it has.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>A partial restriction does not show here.</source>
      <translation>Una restricción parcial no se ve aquí.</translation>
    </message>
    <message>
      <source>A password for {login} was expected; nothing was done.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>a percentage</source>
      <translation>un porcentaje</translation>
    </message>
    <message>
      <source>a person</source>
      <translation>una persona</translation>
    </message>
    <message>
      <source>A PIN or passphrase of at least four characters. It is not kept itself, only what can check it; that it was set is recorded.</source>
      <translation>Un PIN o contraseña de al menos cuatro caracteres. No se guarda en sí, solo lo que permite comprobarlo; que se fijó queda registrado.</translation>
    </message>
    <message>
      <source>a pressure</source>
      <translation>una presión</translation>
    </message>
    <message>
      <source>a refrigerant</source>
      <translation>un refrigerante</translation>
    </message>
    <message>
      <source>A register row holds text only.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>A respirator for this gas is at hand, the way out is free, and nobody works alone.</source>
      <translation>Hay un respirador para este gas a mano, la salida está libre y nadie trabaja solo.</translation>
    </message>
    <message>
      <source>A restriction downstream may hold back little.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>A restriction would hold liquid back.</source>
      <translation>Una restricción retendría líquido.</translation>
    </message>
    <message>
      <source>A restriction would lower the boiling temperature.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>A reversal needs a reason.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>A reversal of entry {number} turns its transfers round, all of them.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>a room volume</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>A row of one of {registers} with an id was expected.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>A row of the table {table} can not be used.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>A row's id of letters, digits, dots and dashes was expected.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>a rule set's last tolerance fits every equipment</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>A running fan does not move air through dirt.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>A running fan does not move air through ice or past a blocked grille.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>A scale of {enough} resolution would decide.</source>
      <translation>Una balanza de {enough} de resolución decidiría.</translation>
    </message>
    <message>
      <source>a scale reading</source>
      <translation>una lectura de balanza</translation>
    </message>
    <message>
      <source>A sealed system was topped up without weighing what was in it. Recover and weigh in the nameplate charge.</source>
      <translation>Se completó un sistema sellado sin pesar lo que tenía. Recupere y cargue por peso lo que dice la placa.</translation>
    </message>
    <message>
      <source>A search without a find</source>
      <translation>Una búsqueda sin hallazgo</translation>
    </message>
    <message>
      <source>A signature stays unlocked for</source>
      <translation>Una firma queda desbloqueada durante</translation>
    </message>
    <message>
      <source>A small overcharge does not show here.</source>
      <translation>Una sobrecarga pequeña no se ve aquí.</translation>
    </message>
    <message>
      <source>A small shortage does not show here.</source>
      <translation>Una falta pequeña no se ve aquí.</translation>
    </message>
    <message>
      <source>a start reading is needed</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>A starved coil boils at a lower temperature.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>A starved coil would boil colder.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>A steady leak was large enough: {figures}</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>A stored value is of a kind this program never writes, so not all could be checked: {problem}.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>a technician</source>
      <translation>un técnico</translation>
    </message>
    <message>
      <source>a temperature</source>
      <translation>una temperatura</translation>
    </message>
    <message>
      <source>a temperature difference</source>
      <translation>una diferencia de temperatura</translation>
    </message>
    <message>
      <source>A test under {minutes_least:g} min tells too little.</source>
      <translation>Una prueba de menos de {minutes_least:g} min dice muy poco.</translation>
    </message>
    <message>
      <source>A text file of two columns; it can be dropped here, too.</source>
      <translation>Un archivo de texto de dos columnas; también puede arrastrarse aquí.</translation>
    </message>
    <message>
      <source>a text holds a character that can not be stored (NUL). Type it again</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>a time span</source>
      <translation>un lapso</translation>
    </message>
    <message>
      <source>A vacuum hold does not prove tightness; the pressure test does.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>A valve may fail without changing it much.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>A valve may hunt around the right figure.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>A valve may still overfeed.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>A valve stuck open overfeeds.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>A valve stuck open, or a loose bulb, overfeeds.</source>
      <translation>Una válvula trabada abierta, o un bulbo suelto, alimenta de más.</translation>
    </message>
    <message>
      <source>A valve that holds its superheat works.</source>
      <translation>Una válvula que mantiene su sobrecalentamiento funciona.</translation>
    </message>
    <message>
      <source>A valve that opens too little holds liquid back in the condenser.</source>
      <translation>Una válvula que abre poco retiene líquido en el condensador.</translation>
    </message>
    <message>
      <source>A valve that opens too little lowers the boiling temperature.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>A valve that opens too little starves the evaporator.</source>
      <translation>Una válvula que abre poco deja sin líquido al evaporador.</translation>
    </message>
    <message>
      <source>A valve that overfeeds lowers it, one that starves raises it.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>A valve that overfeeds raises the boiling temperature.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>A valve that starves feeds the inlet only.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>A valve that stays shut feeds nothing.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>a volume</source>
      <translation>un volumen</translation>
    </message>
    <message>
      <source>A&amp;cts</source>
      <translation>A&amp;cciones</translation>
    </message>
    <message>
      <source>About</source>
      <translation>Sobre</translation>
    </message>
    <message>
      <source>about</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>absolute</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>accept</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Accuracy in % of reading</source>
      <translation>Exactitud en % de la lectura</translation>
    </message>
    <message>
      <source>act</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Add a line</source>
      <translation>Añadir una línea</translation>
    </message>
    <message>
      <source>Add a line to {label}</source>
      <translation>Añadir una línea a {label}</translation>
    </message>
    <message>
      <source>Add these readings</source>
      <translation>Añadir estas lecturas</translation>
    </message>
    <message>
      <source>Added: {added}.</source>
      <translation>Añadido: {added}.</translation>
    </message>
    <message>
      <source>Address</source>
      <translation>Dirección</translation>
    </message>
    <message>
      <source>address</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>afplay</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>After</source>
      <translation>Después</translation>
    </message>
    <message>
      <source>after</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>after {moment}</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>again</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>against</source>
      <translation>en contra</translation>
    </message>
    <message>
      <source>Against the nameplate</source>
      <translation>Contra la placa</translation>
    </message>
    <message>
      <source>against {value_of}</source>
      <translation>contra {value_of}</translation>
    </message>
    <message>
      <source>agrees</source>
      <translation>concuerda</translation>
    </message>
    <message>
      <source>air conditioning</source>
      <translation>aire acondicionado</translation>
    </message>
    <message>
      <source>Air movement</source>
      <translation>Movimiento del aire</translation>
    </message>
    <message>
      <source>Air onto the condenser</source>
      <translation>Aire al condensador</translation>
    </message>
    <message>
      <source>Air over evaporating</source>
      <translation>Aire sobre evaporación</translation>
    </message>
    <message>
      <source>air over evaporating</source>
      <translation>aire sobre evaporación</translation>
    </message>
    <message>
      <source>air pressure</source>
      <translation>presión del aire</translation>
    </message>
    <message>
      <source>Air pressure here</source>
      <translation>Presión del aire aquí</translation>
    </message>
    <message>
      <source>all</source>
      <translation>todos</translation>
    </message>
    <message>
      <source>all jobs</source>
      <translation>todos los trabajos</translation>
    </message>
    <message>
      <source>All of this can be changed later; each change is recorded.</source>
      <translation>Todo esto puede cambiarse después; cada cambio queda registrado.</translation>
    </message>
    <message>
      <source>all the time</source>
      <translation>todo el tiempo</translation>
    </message>
    <message>
      <source>All visible and accessible parts searched</source>
      <translation>Todas las partes visibles y accesibles revisadas</translation>
    </message>
    <message>
      <source>All {count}</source>
      <translation>Todas ({count})</translation>
    </message>
    <message>
      <source>All {count} (F8)</source>
      <translation>Todos: {count} (F8)</translation>
    </message>
    <message>
      <source>All {listed} places of a {kind} were searched.</source>
      <translation>Se revisaron los {listed} lugares de {kind}.</translation>
    </message>
    <message>
      <source>also line-tap valves left on</source>
      <translation>también válvulas perforadoras dejadas puestas</translation>
    </message>
    <message>
      <source>Alt+1 2 3 areas</source>
      <translation>Alt+1 2 3 áreas</translation>
    </message>
    <message>
      <source>Alt+Left</source>
      <translation>Alt+Izquierda</translation>
    </message>
    <message>
      <source>Alt+{place}</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Alt+← jobs</source>
      <translation>Alt+← trabajos</translation>
    </message>
    <message>
      <source>ambient</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>ammonia</source>
      <translation>amoníaco</translation>
    </message>
    <message>
      <source>amp|amps|ampere</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>An absolute pressure can not be negative; got {text}.</source>
      <translation>Una presión absoluta no puede ser negativa; se escribió {text}.</translation>
    </message>
    <message>
      <source>An address such as postgresql://login@server/database was expected</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>an air pressure</source>
      <translation>una presión del aire</translation>
    </message>
    <message>
      <source>an area</source>
      <translation>una superficie</translation>
    </message>
    <message>
      <source>an entry</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>an entry between two heads is not there</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>an entry has a kind</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>An entry is too large to be handed over. {at_most}</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>An entry “{kind}” names its job.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>an equipment</source>
      <translation>un equipo</translation>
    </message>
    <message>
      <source>An evaporator fed enough liquid speaks against too little reaching it.</source>
      <translation>Un evaporador con líquido suficiente habla en contra de que le llegue poco.</translation>
    </message>
    <message>
      <source>An even thin frost lets air through.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>An expansion valve hides a shortage until vapour reaches it.</source>
      <translation>Una válvula de expansión oculta la falta hasta que le llega vapor.</translation>
    </message>
    <message>
      <source>An expansion valve hides an overcharge too.</source>
      <translation>Una válvula de expansión oculta también una sobrecarga.</translation>
    </message>
    <message>
      <source>An invented shop with jobs, cylinders and records to walk through; nothing you do there touches your own.</source>
      <translation>Un taller inventado con trabajos, cilindros y registros para recorrer; nada de lo que haga allí toca lo suyo.</translation>
    </message>
    <message>
      <source>an object</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>an officer</source>
      <translation>un encargado</translation>
    </message>
    <message>
      <source>anchors</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>and the ledger, in quadrature</source>
      <translation>y el libro, en cuadratura</translation>
    </message>
    <message>
      <source>and {more} more.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Annualizing</source>
      <translation>Anualizada</translation>
    </message>
    <message>
      <source>annualizing</source>
      <translation>anualización</translation>
    </message>
    <message>
      <source>annualizing, the higher</source>
      <translation>anualización, la mayor</translation>
    </message>
    <message>
      <source>Another &amp;copy…</source>
      <translation>Otra &amp;copia…</translation>
    </message>
    <message>
      <source>another bench is recording about the same thing. Do it again in a moment</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>another bench recorded about the same thing at the same moment. Do it again</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Another entry stands here under its id.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Another job stands here as {number}.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>another program holds it locked. Close that program and do it again</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>another program is writing to it. Close that window or tool and do it again</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>another rule makes it impossible in time</source>
      <translation>otra norma lo hace imposible a tiempo</translation>
    </message>
    <message>
      <source>Answers</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Any use.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>aplay</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>area</source>
      <translation>superficie</translation>
    </message>
    <message>
      <source>Area detector</source>
      <translation>Detector de área</translation>
    </message>
    <message>
      <source>arrangement</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Arrived</source>
      <translation>Llegada</translation>
    </message>
    <message>
      <source>arrived</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>as entered</source>
      <translation>tal como se anotó</translation>
    </message>
    <message>
      <source>As found</source>
      <translation>Como se encontró</translation>
    </message>
    <message>
      <source>as found</source>
      <translation>como se encontró</translation>
    </message>
    <message>
      <source>as found today</source>
      <translation>como se encontró hoy</translation>
    </message>
    <message>
      <source>As left</source>
      <translation>Como se dejó</translation>
    </message>
    <message>
      <source>as left</source>
      <translation>como se dejó</translation>
    </message>
    <message>
      <source>As read</source>
      <translation>Tal como se leyó</translation>
    </message>
    <message>
      <source>As the system</source>
      <translation>Como el sistema</translation>
    </message>
    <message>
      <source>As typed</source>
      <translation>Tal como se escribió</translation>
    </message>
    <message>
      <source>As&amp;k it by</source>
      <translation>Pre&amp;guntar con</translation>
    </message>
    <message>
      <source>ascii</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>asked</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Asked for on</source>
      <translation>Solicitado el</translation>
    </message>
    <message>
      <source>assumed</source>
      <translation>supuesto</translation>
    </message>
    <message>
      <source>assumed content</source>
      <translation>contenido supuesto</translation>
    </message>
    <message>
      <source>At least three readings at clearly different times are needed.</source>
      <translation>Se necesitan al menos tres lecturas en momentos claramente distintos.</translation>
    </message>
    <message>
      <source>atm</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>atm(a)</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>atmosphere</source>
      <translation>atmósfera</translation>
    </message>
    <message>
      <source>Attached, entry {number}.</source>
      <translation>Adjuntada, asiento {number}.</translation>
    </message>
    <message>
      <source>Authorisation or claim number</source>
      <translation>Número de autorización o reclamo</translation>
    </message>
    <message>
      <source>Average loss over {days} days</source>
      <translation>Pérdida media en {days} días</translation>
    </message>
    <message>
      <source>azeotrope</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Bac&amp;kups…</source>
      <translation>Co&amp;pias…</translation>
    </message>
    <message>
      <source>Back</source>
      <translation>Volver</translation>
    </message>
    <message>
      <source>Backed up: {kept}.</source>
      <translation>Copia guardada: {kept}.</translation>
    </message>
    <message>
      <source>Backups of {shop}.</source>
      <translation>Copias de {shop}.</translation>
    </message>
    <message>
      <source>Backups, newest first</source>
      <translation>Copias, la más reciente primero</translation>
    </message>
    <message>
      <source>Bakery freezer</source>
      <translation>Congelador de panadería</translation>
    </message>
    <message>
      <source>Bakery, Quay Street</source>
      <translation>Panadería, calle del Muelle</translation>
    </message>
    <message>
      <source>balance</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>balance-below-zero</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>ball-valves</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>bar</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>bar(a)</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>bar(g)</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>bara|barabs|bar(abs)</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>barg|bargauge</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>barometer</source>
      <translation>barómetro</translation>
    </message>
    <message>
      <source>batch</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Batch or reclaim number</source>
      <translation>Número de lote o de regeneración</translation>
    </message>
    <message>
      <source>Before</source>
      <translation>Antes</translation>
    </message>
    <message>
      <source>before</source>
      <translation>antes</translation>
    </message>
    <message>
      <source>Before any cut or flame: refrigerant out, evacuated, purged with dry nitrogen, evacuated again.</source>
      <translation>Antes de todo corte o llama: refrigerante fuera, vacío, purga con nitrógeno seco, vacío de nuevo.</translation>
    </message>
    <message>
      <source>Before the circuit is opened</source>
      <translation>Antes de abrir el circuito</translation>
    </message>
    <message>
      <source>Before the circuit is opened: the area, the people, the tools.</source>
      <translation>Antes de abrir el circuito: el área, las personas, las herramientas.</translation>
    </message>
    <message>
      <source>before {moment}</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>begin</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>BEGIN RAISE EXCEPTION USING MESSAGE = TG_TABLE_NAME || ' is append-only'; END</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Behind ice no pattern can be read: defrost first.</source>
      <translation>Tras el hielo no se lee ningún patrón: descongele primero.</translation>
    </message>
    <message>
      <source>Bench</source>
      <translation>Banco</translation>
    </message>
    <message>
      <source>bench</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Bench display</source>
      <translation>Pantalla grande</translation>
    </message>
    <message>
      <source>bench named</source>
      <translation>banco nombrado</translation>
    </message>
    <message>
      <source>Bench scale</source>
      <translation>Balanza de banco</translation>
    </message>
    <message>
      <source>Bench {bench} had seen entries of bench {bench_2} up to {last}; here they are known up to {known}. Take in the chain of bench {bench_2} first, or have bench {bench} hand over every chain it knows.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Bench {bench} has entries 1 to {last} here; a number among them was expected.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Bench {bench} has no entries here; known are: {known}.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>bench {bench}: entries {first} to {last}</source>
      <translation>banco {bench}: asientos {first} a {last}</translation>
    </message>
    <message>
      <source>bench {name}: {number} entries</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>bench-named</source>
      <translation>banco nombrado</translation>
    </message>
    <message>
      <source>benches</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Benches, people, backups</source>
      <translation>Bancos, personas, copias</translation>
    </message>
    <message>
      <source>beside</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>big</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Book the difference</source>
      <translation>Asentar la diferencia</translation>
    </message>
    <message>
      <source>Book the difference with a reason, or leave it to be found out.</source>
      <translation>Asiente la diferencia con un motivo o déjela por averiguar.</translation>
    </message>
    <message>
      <source>booked: {reason}</source>
      <translation>registrado: {reason}</translation>
    </message>
    <message>
      <source>border</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>both ends</source>
      <translation>ambos extremos</translation>
    </message>
    <message>
      <source>Both ends of the transfer are {source}.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>bottom</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>box</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>box at -20 °C</source>
      <translation>cámara a -20 °C</translation>
    </message>
    <message>
      <source>Box temperature</source>
      <translation>Temperatura de la cámara</translation>
    </message>
    <message>
      <source>box temperature</source>
      <translation>temperatura de la cámara</translation>
    </message>
    <message>
      <source>breaks</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>brought to full charge</source>
      <translation>llevado a carga completa</translation>
    </message>
    <message>
      <source>bubble</source>
      <translation>burbuja</translation>
    </message>
    <message>
      <source>Bubble [{pressure}]</source>
      <translation>Burbuja [{pressure}]</translation>
    </message>
    <message>
      <source>Bubble [{temperature}]</source>
      <translation>Burbuja [{temperature}]</translation>
    </message>
    <message>
      <source>bubble and dew are one</source>
      <translation>burbuja y rocío coinciden</translation>
    </message>
    <message>
      <source>bubble pressure</source>
      <translation>presión de burbuja</translation>
    </message>
    <message>
      <source>bubbles</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>budget</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>bug in chargebench %s</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>By p&amp;ressure</source>
      <translation>Por p&amp;resión</translation>
    </message>
    <message>
      <source>By te&amp;mperature</source>
      <translation>Por te&amp;mperatura</translation>
    </message>
    <message>
      <source>By the ledger</source>
      <translation>Según el libro</translation>
    </message>
    <message>
      <source>bytes</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>C&amp;hange</source>
      <translation>Cam&amp;biar</translation>
    </message>
    <message>
      <source>C&amp;hoose file…</source>
      <translation>E&amp;legir archivo…</translation>
    </message>
    <message>
      <source>C&amp;hoose folder…</source>
      <translation>E&amp;legir carpeta…</translation>
    </message>
    <message>
      <source>C&amp;lose job</source>
      <translation>&amp;Cerrar trabajo</translation>
    </message>
    <message>
      <source>C&amp;ylinder</source>
      <translation>&amp;Cilindro</translation>
    </message>
    <message>
      <source>C-014; a scanner types here</source>
      <translation>C-014; un escáner escribe aquí</translation>
    </message>
    <message>
      <source>cabinet</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>calendar</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Calibrated</source>
      <translation>Calibrado</translation>
    </message>
    <message>
      <source>calibrated</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>calibration</source>
      <translation>calibración</translation>
    </message>
    <message>
      <source>Calibration due</source>
      <translation>Vence calibración</translation>
    </message>
    <message>
      <source>Callable[P, R]</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Calls</source>
      <translation>Llamadas</translation>
    </message>
    <message>
      <source>calls</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>can only be read by this login: it records for no bench. The shop's owner lets a bench in with: chargebench join-shop.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Can&amp;cel</source>
      <translation>Can&amp;celar</translation>
    </message>
    <message>
      <source>Cancelled. The job reports are not complete.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Cancelled; nothing of this file was taken in.</source>
      <translation>Cancelado; no se incorporó nada de este archivo.</translation>
    </message>
    <message>
      <source>Capillary tube or expansion valve</source>
      <translation>Tubo capilar o válvula de expansión</translation>
    </message>
    <message>
      <source>caption</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>carbon dioxide</source>
      <translation>dióxido de carbono</translation>
    </message>
    <message>
      <source>carried out</source>
      <translation>realizado</translation>
    </message>
    <message>
      <source>case-coils</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Category</source>
      <translation>Categoría</translation>
    </message>
    <message>
      <source>category</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Cause</source>
      <translation>Causa</translation>
    </message>
    <message>
      <source>cause</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Cautions</source>
      <translation>Precauciones</translation>
    </message>
    <message>
      <source>centimetre|centimeter</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>certificate</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Certificate number</source>
      <translation>Número de certificado</translation>
    </message>
    <message>
      <source>certificate number</source>
      <translation>número de certificado</translation>
    </message>
    <message>
      <source>Certificate of the employer</source>
      <translation>Certificado del empleador</translation>
    </message>
    <message>
      <source>Certificate of the facility</source>
      <translation>Certificado de la instalación</translation>
    </message>
    <message>
      <source>Certificate type</source>
      <translation>Tipo de certificado</translation>
    </message>
    <message>
      <source>Certified by</source>
      <translation>Certificado por</translation>
    </message>
    <message>
      <source>chafed tubes</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Chain files (*.chain);;All files (*)</source>
      <translation>Archivos de cadena (*.chain);;Todos los archivos (*)</translation>
    </message>
    <message>
      <source>chains</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Change</source>
      <translation>Cambiar</translation>
    </message>
    <message>
      <source>change the registers and the shop's settings</source>
      <translation>cambiar los catálogos y ajustes del taller</translation>
    </message>
    <message>
      <source>Change what the register says of this cylinder</source>
      <translation>Cambiar lo que el catálogo dice de este cilindro</translation>
    </message>
    <message>
      <source>changed</source>
      <translation>cambiado</translation>
    </message>
    <message>
      <source>Charge</source>
      <translation>Carga</translation>
    </message>
    <message>
      <source>charge</source>
      <translation>carga</translation>
    </message>
    <message>
      <source>Charge against the most for this floor area ({key} form)</source>
      <translation>Carga frente al máximo para esta superficie (forma {key})</translation>
    </message>
    <message>
      <source>Charge limit, {title}</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Charge tolerance</source>
      <translation>Tolerancia de la carga</translation>
    </message>
    <message>
      <source>Charge, recovery and every gram in between</source>
      <translation>Carga, recuperación y cada gramo entre ambas</translation>
    </message>
    <message>
      <source>charge-limit</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>charge-over-limit</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>chargebench</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>chargebench_job: Expected a version number up to {version}.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>chargebench_job: This file is of version {version}; this program reads up to version {version_2}. Take it in with a newer chargebench.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Charged</source>
      <translation>Cargado</translation>
    </message>
    <message>
      <source>charged</source>
      <translation>cargado</translation>
    </message>
    <message>
      <source>Charged without a decay test on record. Recover, evacuate and prove it dry and tight.</source>
      <translation>Cargado sin prueba de mantenimiento de vacío registrada. Recupere, haga vacío y pruebe que está seco y estanco.</translation>
    </message>
    <message>
      <source>Charged without a pressure test on record. Test with dry nitrogen first.</source>
      <translation>Cargado sin prueba de presión registrada. Pruebe primero con nitrógeno seco.</translation>
    </message>
    <message>
      <source>Charged {text}; what was in before was not weighed</source>
      <translation>Cargado {text}; lo que había antes no se pesó</translation>
    </message>
    <message>
      <source>check</source>
      <translation>revisar</translation>
    </message>
    <message>
      <source>check after repair</source>
      <translation>control tras la reparación</translation>
    </message>
    <message>
      <source>Checked for leaks after charging, and again before leaving.</source>
      <translation>Fugas revisadas tras cargar y de nuevo antes de irse.</translation>
    </message>
    <message>
      <source>checklist</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>checkpoint</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>checks</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>choice</source>
      <translation>opción</translation>
    </message>
    <message>
      <source>Choose a photo</source>
      <translation>Elija una foto</translation>
    </message>
    <message>
      <source>Choose the port it is plugged into.</source>
      <translation>Elija el puerto al que está conectado.</translation>
    </message>
    <message>
      <source>chronic leaker report</source>
      <translation>informe de fuga crónica</translation>
    </message>
    <message>
      <source>Circuit</source>
      <translation>Circuito</translation>
    </message>
    <message>
      <source>circuit</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>classes</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>clean</source>
      <translation>limpio</translation>
    </message>
    <message>
      <source>Clean it first: until then the other readings mislead.</source>
      <translation>Límpielo primero: hasta entonces las demás lecturas engañan.</translation>
    </message>
    <message>
      <source>climate</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Close</source>
      <translation>Cerrar</translation>
    </message>
    <message>
      <source>close</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>close a job or open it again</source>
      <translation>cerrar o reabrir un trabajo</translation>
    </message>
    <message>
      <source>Close off the nitrogen</source>
      <translation>Cierre el nitrógeno</translation>
    </message>
    <message>
      <source>closed</source>
      <translation>cerrado</translation>
    </message>
    <message>
      <source>closed jobs</source>
      <translation>trabajos cerrados</translation>
    </message>
    <message>
      <source>Closed off at</source>
      <translation>Cerrado a las</translation>
    </message>
    <message>
      <source>closed-job</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>cm**2</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>cm2|sq cm</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>CO2 equivalent</source>
      <translation>CO2 equivalente</translation>
    </message>
    <message>
      <source>Coils and valves of each case or room</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>coldest</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Coldest part</source>
      <translation>Parte más fría</translation>
    </message>
    <message>
      <source>color</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>combined</source>
      <translation>combinada</translation>
    </message>
    <message>
      <source>comfort cooling</source>
      <translation>climatización de confort</translation>
    </message>
    <message>
      <source>comma</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Commercial or industrial process refrigeration, or absorption units.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>commercial refrigeration</source>
      <translation>refrigeración comercial</translation>
    </message>
    <message>
      <source>COMMON, the maker's tolerance as typed</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Company certificate</source>
      <translation>Certificado de la empresa</translation>
    </message>
    <message>
      <source>company certification number</source>
      <translation>número de certificación de la empresa</translation>
    </message>
    <message>
      <source>Complaint</source>
      <translation>Reclamo</translation>
    </message>
    <message>
      <source>complaint</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>components</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Components searched</source>
      <translation>Componentes revisados</translation>
    </message>
    <message>
      <source>Composition by mass</source>
      <translation>Composición en masa</translation>
    </message>
    <message>
      <source>Compression ratio</source>
      <translation>Relación de compresión</translation>
    </message>
    <message>
      <source>compression-ratio</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>compressor</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Compressor current</source>
      <translation>Corriente del compresor</translation>
    </message>
    <message>
      <source>compressor current</source>
      <translation>corriente del compresor</translation>
    </message>
    <message>
      <source>Compressor runs</source>
      <translation>El compresor funciona</translation>
    </message>
    <message>
      <source>Compressor works</source>
      <translation>El compresor funciona</translation>
    </message>
    <message>
      <source>Compressor: joints, terminals, shell seam</source>
      <translation>Compresor: uniones, bornes, costura de la carcasa</translation>
    </message>
    <message>
      <source>Computed by</source>
      <translation>Calculado por</translation>
    </message>
    <message>
      <source>Concentration limit for people</source>
      <translation>Límite de concentración para personas</translation>
    </message>
    <message>
      <source>Condenser</source>
      <translation>Condensador</translation>
    </message>
    <message>
      <source>condenser</source>
      <translation>condensador</translation>
    </message>
    <message>
      <source>Condenser fan</source>
      <translation>Ventilador del condensador</translation>
    </message>
    <message>
      <source>condenser fan</source>
      <translation>ventilador del condensador</translation>
    </message>
    <message>
      <source>condenser surface</source>
      <translation>superficie del condensador</translation>
    </message>
    <message>
      <source>Condenser surface, middle</source>
      <translation>Superficie del condensador, centro</translation>
    </message>
    <message>
      <source>Condenser: return bends, inlet, outlet</source>
      <translation>Condensador: codos, entrada, salida</translation>
    </message>
    <message>
      <source>Condensing over ambient</source>
      <translation>Condensación sobre ambiente</translation>
    </message>
    <message>
      <source>condensing over ambient</source>
      <translation>condensación sobre ambiente</translation>
    </message>
    <message>
      <source>Condensing pressure</source>
      <translation>Presión de condensación</translation>
    </message>
    <message>
      <source>condensing pressure</source>
      <translation>presión de condensación</translation>
    </message>
    <message>
      <source>condensing split</source>
      <translation>diferencia de condensación</translation>
    </message>
    <message>
      <source>conflict</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>conflict settled</source>
      <translation>conflicto resuelto</translation>
    </message>
    <message>
      <source>conflicts</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>connect</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Connecting this hose costs {hose}, {share:.1f} % of the charge; surface temperatures cost nothing.</source>
      <translation>Conectar esta manguera cuesta {hose}, {share:.1f} % de la carga; las temperaturas de superficie no cuestan nada.</translation>
    </message>
    <message>
      <source>constant</source>
      <translation>constante</translation>
    </message>
    <message>
      <source>content</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Contents</source>
      <translation>Contenido</translation>
    </message>
    <message>
      <source>contents</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>CoolProp {coolprop_version}, curves fitted</source>
      <translation>CoolProp {coolprop_version}, curvas ajustadas</translation>
    </message>
    <message>
      <source>Copy it again from where it came from, without opening it in an editor.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>corrodes where it stands in water</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Could it have been seen?</source>
      <translation>¿Podría haberse visto?</translation>
    </message>
    <message>
      <source>could not have seen it</source>
      <translation>no la habría podido ver</translation>
    </message>
    <message>
      <source>Count</source>
      <translation>Cantidad</translation>
    </message>
    <message>
      <source>count</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Counts</source>
      <translation>Cuenta</translation>
    </message>
    <message>
      <source>counts</source>
      <translation>cuenta</translation>
    </message>
    <message>
      <source>coverage</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>crimped or brazed ends</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>critical</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Ctrl+,</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Ctrl+, shop and rules</source>
      <translation>Ctrl+, taller y reglas</translation>
    </message>
    <message>
      <source>Ctrl+,: name, address, units, rule set, how it looks here</source>
      <translation>Ctrl+,: nombre, dirección, unidades, reglas, aspecto aquí</translation>
    </message>
    <message>
      <source>Ctrl+=</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Ctrl+F find</source>
      <translation>Ctrl+F buscar</translation>
    </message>
    <message>
      <source>Ctrl+L lock or unlock</source>
      <translation>Ctrl+L bloquear o desbloquear</translation>
    </message>
    <message>
      <source>Ctrl+L; Ctrl+Shift+L sets a passphrase</source>
      <translation>Ctrl+L; Ctrl+Mayús+L fija una contraseña</translation>
    </message>
    <message>
      <source>Ctrl+N</source>
      <translation>Ctrl+N</translation>
    </message>
    <message>
      <source>Ctrl+N new job</source>
      <translation>Ctrl+N nuevo trabajo</translation>
    </message>
    <message>
      <source>Ctrl+P label</source>
      <translation>Ctrl+P etiqueta</translation>
    </message>
    <message>
      <source>Ctrl+P print</source>
      <translation>Ctrl+P imprimir</translation>
    </message>
    <message>
      <source>Ctrl+P: label with QR code, one or all that are listed</source>
      <translation>Ctrl+P: etiqueta con código QR, una o todas las listadas</translation>
    </message>
    <message>
      <source>Ctrl+P: label with QR code, statement of a hand-over</source>
      <translation>Ctrl+P: etiqueta con código QR, declaración de entrega</translation>
    </message>
    <message>
      <source>Ctrl+P: report, checklist, statement; with preview</source>
      <translation>Ctrl+P: informe, lista, declaración; con vista previa</translation>
    </message>
    <message>
      <source>Ctrl+P: the usage log</source>
      <translation>Ctrl+P: el registro de uso</translation>
    </message>
    <message>
      <source>Ctrl+P: with preview, or as PDF</source>
      <translation>Ctrl+P: con vista previa o como PDF</translation>
    </message>
    <message>
      <source>Ctrl+Plus, Ctrl+Minus text size</source>
      <translation>Ctrl+Más, Ctrl+Menos tamaño de texto</translation>
    </message>
    <message>
      <source>Ctrl+R reverse</source>
      <translation>Ctrl+R anular</translation>
    </message>
    <message>
      <source>Ctrl+R: take it back by a further entry, with a reason</source>
      <translation>Ctrl+R: anularlo con otro asiento y un motivo</translation>
    </message>
    <message>
      <source>Ctrl+Return</source>
      <translation>Ctrl+Intro</translation>
    </message>
    <message>
      <source>Ctrl+Return record</source>
      <translation>Ctrl+Intro registrar</translation>
    </message>
    <message>
      <source>Ctrl+Return sign</source>
      <translation>Ctrl+Intro firmar</translation>
    </message>
    <message>
      <source>Ctrl+Shift+Delete</source>
      <translation>Ctrl+Mayús+Supr</translation>
    </message>
    <message>
      <source>Ctrl+Shift+Delete take a line away</source>
      <translation>Ctrl+Mayús+Supr quitar una línea</translation>
    </message>
    <message>
      <source>Ctrl+Shift+Delete takes a line away</source>
      <translation>Ctrl+Mayús+Supr quita una línea</translation>
    </message>
    <message>
      <source>Ctrl+Shift+Delete: the chosen cylinder is not counted yet</source>
      <translation>Ctrl+Mayús+Supr: el cilindro elegido aún no está contado</translation>
    </message>
    <message>
      <source>Ctrl+Shift+L passphrase</source>
      <translation>Ctrl+Mayús+L contraseña</translation>
    </message>
    <message>
      <source>Ctrl+Shift+N</source>
      <translation>Ctrl+Mayús+N</translation>
    </message>
    <message>
      <source>Ctrl+Shift+N not needed</source>
      <translation>Ctrl+Mayús+N no necesario</translation>
    </message>
    <message>
      <source>Ctrl+Shift+P photos</source>
      <translation>Ctrl+Mayús+P fotos</translation>
    </message>
    <message>
      <source>Ctrl+Shift+P; or drag a photo here</source>
      <translation>Ctrl+Mayús+P; o arrastre una foto aquí</translation>
    </message>
    <message>
      <source>Ctrl+Shift+Return</source>
      <translation>Ctrl+Mayús+Intro</translation>
    </message>
    <message>
      <source>Ctrl+Shift+Return close job</source>
      <translation>Ctrl+Mayús+Intro cerrar trabajo</translation>
    </message>
    <message>
      <source>Ctrl+T now</source>
      <translation>Ctrl+T ahora</translation>
    </message>
    <message>
      <source>Ctrl+T writes now</source>
      <translation>Ctrl+T escribe ahora</translation>
    </message>
    <message>
      <source>Ctrl+T writes today</source>
      <translation>Ctrl+T escribe hoy</translation>
    </message>
    <message>
      <source>Ctrl+V; a picture or a copied file</source>
      <translation>Ctrl+V; una imagen o un archivo copiado</translation>
    </message>
    <message>
      <source>Ctrl+Z undo</source>
      <translation>Ctrl+Z deshacer</translation>
    </message>
    <message>
      <source>Ctrl+↑ ↓ steps</source>
      <translation>Ctrl+↑ ↓ pasos</translation>
    </message>
    <message>
      <source>current</source>
      <translation>vigente</translation>
    </message>
    <message>
      <source>customer's room</source>
      <translation>local del cliente</translation>
    </message>
    <message>
      <source>cycling</source>
      <translation>con ciclos</translation>
    </message>
    <message>
      <source>Cylinder</source>
      <translation>Cilindro</translation>
    </message>
    <message>
      <source>cylinder</source>
      <translation>cilindro</translation>
    </message>
    <message>
      <source>Cylinder after</source>
      <translation>Cilindro después</translation>
    </message>
    <message>
      <source>Cylinder before</source>
      <translation>Cilindro antes</translation>
    </message>
    <message>
      <source>Cylinder of flammable gas: left-hand valve thread and red band expected, label read, kept from heat.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>cylinder on the scale</source>
      <translation>cilindro en la balanza</translation>
    </message>
    <message>
      <source>Cylinder {cylinder} holds {mass_words} of {other}; {refrigerant} does not go into it. Choose another cylinder, or register this one as mixed waste.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Cylinder {cylinder} is registered for {registered}; {refrigerant} does not go into it. Choose another cylinder, or register this one as mixed waste.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Cylinder {removeprefix} holds {mass_words} of {refrigerant} by the book; {mass_words_2} was to be taken. Put the cylinder on the scale, or correct the amount.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Cylinder {thing} was overdrawn by two benches: with what bench {bench} handed over it stands at −{mass} of {refrigerant}. Put it on the scale, book the difference, then {settle}.</source>
      <translation>Dos bancos sacaron de más del cilindro {thing}: con lo que entregó el banco {bench} está en −{mass} de {refrigerant}. Póngalo en la balanza, asiente la diferencia y luego {settle}.</translation>
    </message>
    <message>
      <source>cylinder, refrigerant, owner; a scanner types here</source>
      <translation>cilindro, refrigerante, dueño; un escáner escribe aquí</translation>
    </message>
    <message>
      <source>cylinder-overfilled</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Cylinders</source>
      <translation>Cilindros</translation>
    </message>
    <message>
      <source>Cylinders of the stock-take</source>
      <translation>Cilindros del inventario</translation>
    </message>
    <message>
      <source>C|degC|deg C|celsius|ºC</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>d MMM yyyy</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Dark</source>
      <translation>Oscuro</translation>
    </message>
    <message>
      <source>dark</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>darwin</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Data &amp;bits</source>
      <translation>&amp;Bits de datos</translation>
    </message>
    <message>
      <source>Data bits</source>
      <translation>Bits de datos</translation>
    </message>
    <message>
      <source>date</source>
      <translation>fecha</translation>
    </message>
    <message>
      <source>date and time</source>
      <translation>fecha y hora</translation>
    </message>
    <message>
      <source>Dated</source>
      <translation>Fechado</translation>
    </message>
    <message>
      <source>day</source>
      <translation>día</translation>
    </message>
    <message>
      <source>day|days</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>ddd d MMM</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Decant</source>
      <translation>Trasvasar</translation>
    </message>
    <message>
      <source>decant</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>decanted</source>
      <translation>trasvasado</translation>
    </message>
    <message>
      <source>decay</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Decay test</source>
      <translation>Prueba de mantenimiento de vacío</translation>
    </message>
    <message>
      <source>decay test</source>
      <translation>prueba de mantenimiento de vacío</translation>
    </message>
    <message>
      <source>Decay test: {verdict}. {reason} {after}</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Decay test: {verdict}{firm}. {reason}</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>decay-not-tight</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>decay-test-missing</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Decides the recovery level of a machine.</source>
      <translation>Decide el nivel de recuperación de una máquina.</translation>
    </message>
    <message>
      <source>decimal</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Decimal mark</source>
      <translation>Signo decimal</translation>
    </message>
    <message>
      <source>decision</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>decommissioning</source>
      <translation>desmantelamiento</translation>
    </message>
    <message>
      <source>defrosts a day</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>delete</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>delivered</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Dense suction gas would raise it.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>density</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Density in</source>
      <translation>Densidad en</translation>
    </message>
    <message>
      <source>Depends on whether it starves or overfeeds.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Desk</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>destruction</source>
      <translation>destrucción</translation>
    </message>
    <message>
      <source>Detection system last checked</source>
      <translation>Detección revisada por última vez</translation>
    </message>
    <message>
      <source>detection-missing</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Detector</source>
      <translation>Detector</translation>
    </message>
    <message>
      <source>detector</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Detector checked after</source>
      <translation>Detector probado después</translation>
    </message>
    <message>
      <source>Detector checked before</source>
      <translation>Detector probado antes</translation>
    </message>
    <message>
      <source>deterministic</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Deutsch</source>
      <translation>Deutsch</translation>
    </message>
    <message>
      <source>dew</source>
      <translation>rocío</translation>
    </message>
    <message>
      <source>Dew [{pressure}]</source>
      <translation>Rocío [{pressure}]</translation>
    </message>
    <message>
      <source>Dew [{temperature}]</source>
      <translation>Rocío [{temperature}]</translation>
    </message>
    <message>
      <source>dew pressure</source>
      <translation>presión de rocío</translation>
    </message>
    <message>
      <source>Difference</source>
      <translation>Diferencia</translation>
    </message>
    <message>
      <source>difference</source>
      <translation>diferencia</translation>
    </message>
    <message>
      <source>difference found by weighing</source>
      <translation>diferencia hallada al pesar</translation>
    </message>
    <message>
      <source>Differences</source>
      <translation>Diferencias</translation>
    </message>
    <message>
      <source>differs</source>
      <translation>difiere</translation>
    </message>
    <message>
      <source>dimensionless</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Dirt was seen.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Dirt, or too little air, keeps the heat in.</source>
      <translation>La suciedad, o poco aire, retiene el calor.</translation>
    </message>
    <message>
      <source>dirty</source>
      <translation>sucio</translation>
    </message>
    <message>
      <source>dirty condenser</source>
      <translation>condensador sucio</translation>
    </message>
    <message>
      <source>Discharge line</source>
      <translation>Línea de descarga</translation>
    </message>
    <message>
      <source>Discharge line temperature</source>
      <translation>Temperatura de la línea de descarga</translation>
    </message>
    <message>
      <source>discharge line temperature</source>
      <translation>temperatura de la línea de descarga</translation>
    </message>
    <message>
      <source>discharge-line</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>disposal</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>disposed of</source>
      <translation>desechado</translation>
    </message>
    <message>
      <source>document</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Document number</source>
      <translation>Número de documento</translation>
    </message>
    <message>
      <source>does not count</source>
      <translation>no cuenta</translation>
    </message>
    <message>
      <source>Done</source>
      <translation>Hecho</translation>
    </message>
    <message>
      <source>done</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Done at</source>
      <translation>Hecho el</translation>
    </message>
    <message>
      <source>done now</source>
      <translation>hecho ahora</translation>
    </message>
    <message>
      <source>Done so far, and why not in time</source>
      <translation>Hecho hasta ahora, y por qué no a tiempo</translation>
    </message>
    <message>
      <source>done {done_on}</source>
      <translation>hecho {done_on}</translation>
    </message>
    <message>
      <source>door open, fan at floor level</source>
      <translation>puerta abierta, ventilador a ras del piso</translation>
    </message>
    <message>
      <source>Door-frame heater loop</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>door-heater</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Doubt from {part} (k = 1)</source>
      <translation>Duda por {part} (k = 1)</translation>
    </message>
    <message>
      <source>Doubt, line by line</source>
      <translation>Duda, línea por línea</translation>
    </message>
    <message>
      <source>Drain-pan loop</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>drain-pan-loop</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>draught</source>
      <translation>corriente de aire</translation>
    </message>
    <message>
      <source>Draw {refrigerant} as liquid. {reason}</source>
      <translation>Extraiga {refrigerant} como líquido. {reason}</translation>
    </message>
    <message>
      <source>Drawn</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Drawn as</source>
      <translation>Extraído como</translation>
    </message>
    <message>
      <source>drier</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>drier drop</source>
      <translation>caída en el secador</translation>
    </message>
    <message>
      <source>Drier, in</source>
      <translation>Filtro secador, entrada</translation>
    </message>
    <message>
      <source>Drier, out</source>
      <translation>Filtro secador, salida</translation>
    </message>
    <message>
      <source>drop</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Drop beyond temperature</source>
      <translation>Caída más allá de la temperatura</translation>
    </message>
    <message>
      <source>dropped</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>drops</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>dry nitrogen</source>
      <translation>nitrógeno seco</translation>
    </message>
    <message>
      <source>Dry nitrogen through a regulator and a relief valve; never oxygen or compressed air.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Dry nitrogen, regulated and relieved; never oxygen or air.</source>
      <translation>Nitrógeno seco, con regulador y alivio; nunca oxígeno ni aire.</translation>
    </message>
    <message>
      <source>Dry on: break with nitrogen and pull again.</source>
      <translation>Siga secando: rompa con nitrógeno y haga vacío de nuevo.</translation>
    </message>
    <message>
      <source>Due</source>
      <translation>Vence</translation>
    </message>
    <message>
      <source>due</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Due dates</source>
      <translation>Vencimientos</translation>
    </message>
    <message>
      <source>due dates</source>
      <translation>vencimientos</translation>
    </message>
    <message>
      <source>Due on</source>
      <translation>Vence el</translation>
    </message>
    <message>
      <source>due this month</source>
      <translation>vence este mes</translation>
    </message>
    <message>
      <source>due today</source>
      <translation>vence hoy</translation>
    </message>
    <message>
      <source>Due: {due}.</source>
      <translation>Vence: {due}.</translation>
    </message>
    <message>
      <source>Duty</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>duty-overdue</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>E&amp;ntries</source>
      <translation>A&amp;sientos</translation>
    </message>
    <message>
      <source>E&amp;quipment</source>
      <translation>E&amp;quipo</translation>
    </message>
    <message>
      <source>E&amp;xport…</source>
      <translation>E&amp;xportar…</translation>
    </message>
    <message>
      <source>e.g. Nameplate</source>
      <translation>p. ej. placa</translation>
    </message>
    <message>
      <source>edition</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>effective</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>efforts</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>electronic detector</source>
      <translation>detector electrónico</translation>
    </message>
    <message>
      <source>elevation</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Employer</source>
      <translation>Empleador</translation>
    </message>
    <message>
      <source>employer</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>end</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>End reading</source>
      <translation>Lectura final</translation>
    </message>
    <message>
      <source>Ended on {done_on}: {how}{ended}.</source>
      <translation>Terminado el {done_on}: {how}{ended}.</translation>
    </message>
    <message>
      <source>Ended: {ended}.</source>
      <translation>Terminado: {ended}.</translation>
    </message>
    <message>
      <source>ends</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>English</source>
      <translation>English</translation>
    </message>
    <message>
      <source>Enter open</source>
      <translation>Intro abrir</translation>
    </message>
    <message>
      <source>Entries</source>
      <translation>Asientos</translation>
    </message>
    <message>
      <source>entries</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>entries checked</source>
      <translation>asientos verificados</translation>
    </message>
    <message>
      <source>Entries of this bench itself ({bench}) came back in a file: its records had been set back to an older copy. {look}</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>entries written</source>
      <translation>asientos escritos</translation>
    </message>
    <message>
      <source>Entries {bench_number} to {number} of bench {name} are cut off: the head kept beside the chain is entry {number}.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Entries {first} to {upto} of bench {bench} can not be read{known}.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Entries {missing} to {upto} of bench {bench} are missing: the file begins at {first}.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Entries {number} to {bench_number} of bench {name} were added behind the head kept beside the chain.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Entry</source>
      <translation>Asiento</translation>
    </message>
    <message>
      <source>entry</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>entry {bench}-{undone_number}</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Entry {checkpoint_number} of bench {bench} is not the one that stood when a head was kept ({kept_at}).</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Entry {checkpoint_number} of bench {bench} stood when a head was kept ({kept_at}); entries {first} to {checkpoint_number} are gone.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Entry {entry_number} ({kind}) is not reversed; record the right state as a new entry.</source>
      <translation>El asiento {entry_number} ({kind}) no se anula; registre el estado correcto como asiento nuevo.</translation>
    </message>
    <message>
      <source>Entry {entry_number} reversed by entry {reversal_number}.</source>
      <translation>Asiento {entry_number} anulado por el asiento {reversal_number}.</translation>
    </message>
    <message>
      <source>Entry {entry_number}, {kind_words} by {named}, {happened_at}</source>
      <translation>Asiento {entry_number}, {kind_words} de {named}, {happened_at}</translation>
    </message>
    <message>
      <source>Entry {entry} reversed; {step} is open again.</source>
      <translation>Asiento {entry} anulado; {step} está abierto de nuevo.</translation>
    </message>
    <message>
      <source>entry {entry}: {what}</source>
      <translation>asiento {entry}: {what}</translation>
    </message>
    <message>
      <source>Entry {first} of bench {bench} can not be read{known}.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Entry {last} of bench {name} stands out of its place.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Entry {missing} of bench {bench} is missing: the file begins at {first}.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Entry {number} ({kind}) is not reversed; record the right state as a new entry.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Entry {number} can not be read as an entry: {problem}.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Entry {number} does not follow the entry before it.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Entry {number} is already reversed.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Entry {number} is not of this period. Choose a longer one to go to it.</source>
      <translation>El asiento {number} no es de este período. Elija uno más largo para ir a él.</translation>
    </message>
    <message>
      <source>Entry {number} of bench {bench}</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>entry {number} of bench {bench}</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Entry {number} of bench {bench} does not give its hash: it was changed after it was signed, or never was.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Entry {number} of bench {bench} is another one here than in the file: one of the two chains is forged, or two computers record as bench {bench}. Nothing was taken in. Verify both, and keep this file.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Entry {number} of bench {name} is missing.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Entry {number} of bench {name} is not the one kept as its head.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Entry {number} or one of its mass lines was changed: what is stored does not give its hash.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Entry {number}, {step}, {when}, {who}</source>
      <translation>Asiento {number}, {step}, {when}, {who}</translation>
    </message>
    <message>
      <source>Entry {standing_number} already stands under this id with other content; nothing was recorded. Record a correction instead.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Equation</source>
      <translation>Ecuación</translation>
    </message>
    <message>
      <source>equation</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Equipment</source>
      <translation>Equipo</translation>
    </message>
    <message>
      <source>equipment</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Equipment and cylinder are earthed before charging.</source>
      <translation>Equipo y cilindro están puestos a tierra antes de cargar.</translation>
    </message>
    <message>
      <source>Equipment is</source>
      <translation>El equipo queda</translation>
    </message>
    <message>
      <source>equipment on the scale</source>
      <translation>equipo en la balanza</translation>
    </message>
    <message>
      <source>Errand</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Esc</source>
      <translation>Esc</translation>
    </message>
    <message>
      <source>Esc back</source>
      <translation>Esc volver</translation>
    </message>
    <message>
      <source>Esc close a panel</source>
      <translation>Esc cerrar un panel</translation>
    </message>
    <message>
      <source>Esc; nothing is signed, what is typed stays</source>
      <translation>Esc; nada se firma, lo escrito queda</translation>
    </message>
    <message>
      <source>Esc; what is counted stays here</source>
      <translation>Esc; lo contado queda aquí</translation>
    </message>
    <message>
      <source>Esc; what is typed stays here</source>
      <translation>Esc; lo escrito queda aquí</translation>
    </message>
    <message>
      <source>Estimated pair data</source>
      <translation>Datos de pares estimados</translation>
    </message>
    <message>
      <source>Estimated pair data: {each}.</source>
      <translation>Datos de pares estimados: {each}.</translation>
    </message>
    <message>
      <source>Evacuated and shut down.</source>
      <translation>Evacuado y apagado.</translation>
    </message>
    <message>
      <source>evacuation</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>evaporator</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>evaporator difference</source>
      <translation>diferencia de evaporación</translation>
    </message>
    <message>
      <source>Evaporator fan</source>
      <translation>Ventilador del evaporador</translation>
    </message>
    <message>
      <source>evaporator fan</source>
      <translation>ventilador del evaporador</translation>
    </message>
    <message>
      <source>Evaporator surface, inlet</source>
      <translation>Superficie del evaporador, entrada</translation>
    </message>
    <message>
      <source>evaporator surface, inlet</source>
      <translation>superficie del evaporador, entrada</translation>
    </message>
    <message>
      <source>Evaporator surface, outlet</source>
      <translation>Superficie del evaporador, salida</translation>
    </message>
    <message>
      <source>evaporator surface, outlet</source>
      <translation>superficie del evaporador, salida</translation>
    </message>
    <message>
      <source>Evaporator: bends, plate, joints</source>
      <translation>Evaporador: codos, placa, uniones</translation>
    </message>
    <message>
      <source>even</source>
      <translation>par</translation>
    </message>
    <message>
      <source>even over the whole coil</source>
      <translation>pareja en todo el serpentín</translation>
    </message>
    <message>
      <source>Every cylinder once over the scale. Scan or type its id and press Enter, type the reading and press Enter, take the next. What is typed is kept until you sign; a cylinder weighed again counts as weighed last. Another content on the label than in the register: type it behind the id, such as C-014 R600a.</source>
      <translation>Cada cilindro una vez por la balanza. Escanee o escriba su identificador e Intro, escriba la lectura e Intro, tome el siguiente. Lo escrito se guarda hasta firmar; un cilindro pesado de nuevo vale como se pesó la última vez. Si la etiqueta dice otro contenido que el catálogo: escríbalo tras el identificador, como C-014 R600a.</translation>
    </message>
    <message>
      <source>Every entry is recomputed from what was signed, and compared.</source>
      <translation>Cada asiento se recalcula de lo firmado y se compara.</translation>
    </message>
    <message>
      <source>Every fault on the list does this.</source>
      <translation>Toda falla de la lista hace esto.</translation>
    </message>
    <message>
      <source>every one, by number</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Every signature needs a passphrase</source>
      <translation>Cada firma necesita contraseña</translation>
    </message>
    <message>
      <source>everything</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>everything recorded</source>
      <translation>todo lo registrado</translation>
    </message>
    <message>
      <source>evidence</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>exceedance</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>expanded</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Expected</source>
      <translation>Esperado</translation>
    </message>
    <message>
      <source>expected</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Expected a chain file at {source}: {reason}.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Expected a chain file: its first line begins {decode}{version}.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Expected a chain file; this file is empty.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Expected a chain file; {source} is none.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Expected a cylinder of the register.</source>
      <translation>Se esperaba un cilindro del catálogo.</translation>
    </message>
    <message>
      <source>Expected a cylinder of the register; got “{cylinder}”.</source>
      <translation>Se esperaba un cilindro del catálogo; se escribió “{cylinder}”.</translation>
    </message>
    <message>
      <source>Expected a cylinder with its weight before and after.</source>
      <translation>Se esperaba un cilindro con su peso antes y después.</translation>
    </message>
    <message>
      <source>Expected a cylinder; scan or type its id, then its weight.</source>
      <translation>Se esperaba un cilindro; escanee o escriba su identificador y luego su peso.</translation>
    </message>
    <message>
      <source>Expected a date and time with its zone, such as 2026-03-04T08:10-05:00; got {got}.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Expected a date and time, such as 2026-11-25 14:30; got “{text}”.</source>
      <translation>Se esperaba fecha y hora, por ejemplo 2026-11-25 14:30; se escribió “{text}”.</translation>
    </message>
    <message>
      <source>Expected a date as year-month-day, such as 2026-11-25, or nothing.</source>
      <translation>Se esperaba una fecha como año-mes-día, por ejemplo 2026-11-25, o nada.</translation>
    </message>
    <message>
      <source>Expected a date as year-month-day, such as 2026-11-25; got “{text}”.</source>
      <translation>Se esperaba una fecha como año-mes-día, por ejemplo 2026-11-25; se escribió “{text}”.</translation>
    </message>
    <message>
      <source>Expected a design pressure from the nameplate before a pressure test is planned.</source>
      <translation>Se esperaba una presión de diseño de la placa antes de planear una prueba de presión.</translation>
    </message>
    <message>
      <source>expected a finite number.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Expected a folder that can be written; {problem}.</source>
      <translation>Se esperaba una carpeta en la que se pueda escribir; {problem}.</translation>
    </message>
    <message>
      <source>Expected a full charge above zero to reckon a leak rate.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Expected a gauge pressure, such as 150 psig or 10 bar(g).</source>
      <translation>Se esperaba una presión manométrica, como 150 psig o 10 bar(g).</translation>
    </message>
    <message>
      <source>Expected a height between -2000 m and 11000 m above sea level.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Expected a job file at {path}: {reason}.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Expected a job file of at most {size_most:_} bytes; this one has {size:_}.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Expected a job file: an object that begins {"chargebench_job": 1.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Expected a job file; this file is empty.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Expected a job with a signed recovery of equipment that is disposed of or taken out of service.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Expected a job, a shop, register rows or stock acts; there is none.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Expected a last day that is not before the first.</source>
      <translation>Se esperaba un último día no anterior al primero.</translation>
    </message>
    <message>
      <source>Expected a leak above zero; no test can prove that there is none.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Expected a list [...]; got {named}.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>expected a list.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Expected a nameplate charge above zero, not {nameplate}; read it from the nameplate first.</source>
      <translation>Se esperaba una carga de placa sobre cero, no {nameplate}; léala primero de la placa.</translation>
    </message>
    <message>
      <source>Expected a nameplate charge above zero.</source>
      <translation>Se esperaba una carga de placa sobre cero.</translation>
    </message>
    <message>
      <source>expected a number.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Expected a person of the register; got “{person}”.</source>
      <translation>Se esperaba una persona del catálogo; se escribió “{person}”.</translation>
    </message>
    <message>
      <source>Expected a PIN or passphrase of {shortest} to {longest} characters.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Expected a pressure difference across the leak in the test.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Expected a reason for the reversal.</source>
      <translation>Se esperaba un motivo de la anulación.</translation>
    </message>
    <message>
      <source>Expected a reason to open a closed job again.</source>
      <translation>Se esperaba un motivo para reabrir un trabajo cerrado.</translation>
    </message>
    <message>
      <source>Expected a reason why this step is not needed.</source>
      <translation>Se esperaba un motivo por el que este paso no es necesario.</translation>
    </message>
    <message>
      <source>Expected a regulator and a relief device before pressure goes in.</source>
      <translation>Se esperaban regulador y alivio antes de meter presión.</translation>
    </message>
    <message>
      <source>Expected a row of the register {register}; got “{row_id}”.</source>
      <translation>Se esperaba una fila del catálogo {register}; se escribió “{row_id}”.</translation>
    </message>
    <message>
      <source>expected a row “other” for categories not named.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Expected a row “{key}” in register.{register}.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Expected a row “{site}” in register.site.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Expected a scale of the register.</source>
      <translation>Se esperaba una balanza del catálogo.</translation>
    </message>
    <message>
      <source>Expected a scale of the register; choose the one that is used.</source>
      <translation>Se esperaba una balanza del catálogo; elija la que se usa.</translation>
    </message>
    <message>
      <source>Expected a scale of the register; got “{scale}”.</source>
      <translation>Se esperaba una balanza del catálogo; se escribió “{scale}”.</translation>
    </message>
    <message>
      <source>Expected a stamped tare above zero.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Expected a step above zero, and a range from low to high.</source>
      <translation>Se esperaba un paso sobre cero y un rango de menor a mayor.</translation>
    </message>
    <message>
      <source>Expected a step that gives at most {rows_most} rows; got {count}.</source>
      <translation>Se esperaba un paso que dé a lo sumo {rows_most} filas; serían {count}.</translation>
    </message>
    <message>
      <source>expected a table of figures.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>expected a table of value, source, place and mark.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>expected a table with {identity}.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>expected a table.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Expected a tare in the register for {cylinder}; enter it first.</source>
      <translation>Se esperaba una tara de {cylinder} en el catálogo; anótela primero.</translation>
    </message>
    <message>
      <source>Expected a temperature above absolute zero.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Expected a temperature between −70 °C and 150 °C for the density of {name} gas.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Expected a temperature of water between −80 °C and 200 °C.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Expected a test pressure of at most {lowest}, the design pressure of the {side}; {planned} could burst it.</source>
      <translation>Se esperaba una presión de prueba de a lo sumo {lowest}, la de diseño del {side}; {planned} podría reventarlo.</translation>
    </message>
    <message>
      <source>Expected a test time above zero.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Expected a time after the job was opened.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Expected a time before the job was closed.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Expected a water capacity above zero, as stamped on the cylinder.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Expected a water capacity as a mass of water or a volume.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>expected a whole number of day, month or year.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Expected absolute pressure and temperatures above zero.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Expected absolute pressures, none of them below zero.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Expected after the speed: stable MARK, moving MARK, unit UNIT, decimal comma or asked WORD, each once; got “{part}”.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Expected an absolute pressure above zero and up to 300 bar for nitrogen.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Expected an absolute pressure above zero and up to the dew pressure of {name}, {dew} at {celsius}; above it there is liquid.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Expected an absolute pressure above zero, such as 420 micron or 56 Pa.</source>
      <translation>Se esperaba una presión absoluta sobre cero, como 420 micron o 56 Pa.</translation>
    </message>
    <message>
      <source>Expected an absolute pressure between {low} and {high} for the boiling line of water.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Expected an absolute suction pressure above zero.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Expected an entry by which a cylinder's content was returned.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Expected an equipment of the register; got “{equipment}”.</source>
      <translation>Se esperaba un equipo del catálogo; se escribió “{equipment}”.</translation>
    </message>
    <message>
      <source>Expected an id of letters, digits, dots and dashes, such as {next_id}.</source>
      <translation>Se esperaba un identificador de letras, cifras, puntos y guiones, como {next_id}.</translation>
    </message>
    <message>
      <source>Expected an id of the {kind} register; got “{typed}”. Press Down to see what there is, or to make a new one.</source>
      <translation>Se esperaba un identificador del catálogo {kind}; se escribió “{typed}”. Pulse flecha abajo para ver lo que hay o crear uno nuevo.</translation>
    </message>
    <message>
      <source>Expected an id such as C-014 for each row.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Expected an object {{...}}; got {named}.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Expected another cylinder than the one decanted from.</source>
      <translation>Se esperaba otro cilindro que el de origen.</translation>
    </message>
    <message>
      <source>Expected at least one day since the last addition; additions of the same day for one leak are summed first.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>expected at least one form.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Expected at least two readings, {example}; got {rows}.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Expected at most {lines_most} readings; got {rows}. Keep each second or each fifth line.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Expected at most {longest} characters; got {count}.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Expected at most {most} characters; got {text}.</source>
      <translation>Se esperaban a lo sumo {most} caracteres; hay {text}.</translation>
    </message>
    <message>
      <source>Expected at most {most} lines; got {count}.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Expected at the end</source>
      <translation>Esperado al final</translation>
    </message>
    <message>
      <source>expected either mass or times_lfl.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Expected either “typed”, or “not_needed” with the reason.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Expected entry {last} of bench {bench}; entry {number} stands here.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Expected every step signed or set aside before closing; open: {waiting}.</source>
      <translation>Se esperaba cada paso firmado o apartado antes de cerrar; abiertos: {waiting}.</translation>
    </message>
    <message>
      <source>Expected finite times and absolute pressures above zero; a gauge that shows 0 micron is below its range: enter the smallest figure it can show.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Expected how far either side is allowed, above zero.</source>
      <translation>Se esperaba cuánto se permite a cada lado, sobre cero.</translation>
    </message>
    <message>
      <source>Expected how it was settled.</source>
      <translation>Se esperaba cómo se resolvió.</translation>
    </message>
    <message>
      <source>Expected its weight.</source>
      <translation>Se esperaba su peso.</translation>
    </message>
    <message>
      <source>Expected length and bore of the hose, or its volume; or no hose.</source>
      <translation>Se esperaban largo y diámetro de la manguera, o su volumen; o ninguna manguera.</translation>
    </message>
    <message>
      <source>Expected less than one {unit} in the {smaller} of {text}.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Expected molar masses and viscosities above zero.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Expected more after than before; nothing was recovered.</source>
      <translation>Se esperaba más después que antes; nada se recuperó.</translation>
    </message>
    <message>
      <source>Expected one decimal mark in {text}; write 1234.5 or 1234,5, without marks between thousands.</source>
      <translation>Se esperaba un signo decimal en {text}; escriba 1234.5 o 1234,5, sin marcas entre miles.</translation>
    </message>
    <message>
      <source>Expected one number in {text}; spaces may only part thousands, as in 4 312.5.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Expected one of {called}; got “{words}”.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Expected one of: {choices}; got “{text}”.</source>
      <translation>Se esperaba uno de: {choices}; se escribió “{text}”.</translation>
    </message>
    <message>
      <source>Expected one of: {forms}; got {got}.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Expected one of: {names}.</source>
      <translation>Se esperaba uno de: {names}.</translation>
    </message>
    <message>
      <source>Expected one {kind} or two, such as 5 to 8; got “{text}”.</source>
      <translation>Se esperaba un valor ({kind}) o dos, como 5 a 8; se escribió “{text}”.</translation>
    </message>
    <message>
      <source>Expected one {kind}, such as {example}; got {text}.</source>
      <translation>Se esperaba un solo valor ({kind}), como {example}; se escribió {text}.</translation>
    </message>
    <message>
      <source>Expected one {kind}, such as {example}; this is too long.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Expected pressures and densities above zero.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Expected refrigerant and charge at the nameplate first.</source>
      <translation>Se esperaban primero refrigerante y carga en la placa.</translation>
    </message>
    <message>
      <source>Expected somebody left who is of the shop, to keep its registers.</source>
      <translation>Se esperaba que quede alguien del taller para llevar los catálogos.</translation>
    </message>
    <message>
      <source>Expected somebody who signs; choose a person first.</source>
      <translation>Se esperaba alguien que firme; elija primero una persona.</translation>
    </message>
    <message>
      <source>Expected speed and frame of the line, such as {example}; got “{first}”.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Expected text in quotes{example}; got {named}.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Expected text that can be seen; it holds the character {odd}.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>expected text.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Expected the day it was last full, {last}, not to be after {on}.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Expected the low-side design pressure too: the low side is the weaker one, and is under test unless it is shut off.</source>
      <translation>Se esperaba también la presión de diseño del lado de baja: es el más débil y está bajo prueba si no está cerrado.</translation>
    </message>
    <message>
      <source>Expected the lower {kind} first, in the same unit as the higher.</source>
      <translation>Se esperaba primero el valor menor ({kind}), en la misma unidad que el mayor.</translation>
    </message>
    <message>
      <source>Expected the mass released; the nameplate's where not known.</source>
      <translation>Se esperaba la masa liberada; la de la placa si no se conoce.</translation>
    </message>
    <message>
      <source>Expected the pressure in the hose at disconnection.</source>
      <translation>Se esperaba la presión en la manguera al desconectar.</translation>
    </message>
    <message>
      <source>Expected the reading it is of, or what it is in words.</source>
      <translation>Se esperaba de qué lectura es, o qué es en palabras.</translation>
    </message>
    <message>
      <source>Expected the reason of the difference that is to be booked.</source>
      <translation>Se esperaba el motivo de la diferencia que se asienta.</translation>
    </message>
    <message>
      <source>Expected the refrigerant at the nameplate first.</source>
      <translation>Se esperaba primero el refrigerante en la placa.</translation>
    </message>
    <message>
      <source>Expected the rule that allows this release.</source>
      <translation>Se esperaba la regla que permite esta liberación.</translation>
    </message>
    <message>
      <source>Expected the same new one twice. Type all anew.</source>
      <translation>Se esperaba dos veces la misma nueva. Escriba todo de nuevo.</translation>
    </message>
    <message>
      <source>Expected this field; it is missing.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Expected two columns, time and reading, parted by tab, semicolon or comma, {example}.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Expected what the photo shows, in at most {most} letters, such as: Nameplate.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Expected why the method changes: it may after taking a facility over.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Expected {kind} that is not negative; got {text}.</source>
      <translation>Se esperaba {kind} no negativa; se escribió {text}.</translation>
    </message>
    <message>
      <source>Expected {kind} with its unit, such as {example}; got only {text}.</source>
      <translation>Se esperaba {kind} con su unidad, como {example}; solo se escribió {text}.</translation>
    </message>
    <message>
      <source>Expected {kind}, such as {example}; fractions are read only for lengths, in halves to 64ths of an inch.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Expected {kind}, such as {example}; got {text}.</source>
      <translation>Se esperaba {kind}, como {example}; se escribió {text}.</translation>
    </message>
    <message>
      <source>Expected {kind}, such as {example}; nothing was typed.</source>
      <translation>Se esperaba {kind}, como {example}; no se escribió nada.</translation>
    </message>
    <message>
      <source>Expected {kind}, such as {example}{but}.</source>
      <translation>Se esperaba {kind}, como {example}{but}.</translation>
    </message>
    <message>
      <source>expected {kind}.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Expected {label}.</source>
      <translation>Se esperaba {label}.</translation>
    </message>
    <message>
      <source>Expected {label}; nothing is there.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>expected {names}.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Expected {wanted} after than before; nothing was decanted.</source>
      <translation>Se esperaba {wanted} después que antes; nada se trasvasó.</translation>
    </message>
    <message>
      <source>Expected {wanted} at the end than at the start; nothing was charged.</source>
      <translation>Se esperaba {wanted} al final que al inicio; nada se cargó.</translation>
    </message>
    <message>
      <source>Expected {what} above zero.</source>
      <translation>Se esperaba {what} sobre cero.</translation>
    </message>
    <message>
      <source>Expected {what} on record ({listed}); got “{value}”.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Expected {what}.</source>
      <translation>Se esperaba {what}.</translation>
    </message>
    <message>
      <source>Expected “recovered”, for there are weighings of a cylinder.</source>
      <translation>Se esperaba “recuperado”, pues hay pesajes de un cilindro.</translation>
    </message>
    <message>
      <source>exponential</source>
      <translation>exponencial</translation>
    </message>
    <message>
      <source>export</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>extended: {ground}</source>
      <translation>prorrogado: {ground}</translation>
    </message>
    <message>
      <source>extends</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>extensions</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>F1 guide</source>
      <translation>F1 guía</translation>
    </message>
    <message>
      <source>F1 guide and keys</source>
      <translation>F1 guía y teclas</translation>
    </message>
    <message>
      <source>F11 bench display</source>
      <translation>F11 pantalla grande</translation>
    </message>
    <message>
      <source>F11: figures readable from three metres</source>
      <translation>F11: cifras legibles a tres metros</translation>
    </message>
    <message>
      <source>F2 take reading</source>
      <translation>F2 tomar lectura</translation>
    </message>
    <message>
      <source>F2: into the field typed in</source>
      <translation>F2: en el campo en que se escribe</translation>
    </message>
    <message>
      <source>F4 who signs</source>
      <translation>F4 quién firma</translation>
    </message>
    <message>
      <source>F4: who signs</source>
      <translation>F4: quién firma</translation>
    </message>
    <message>
      <source>F6 steps or form</source>
      <translation>F6 pasos o formulario</translation>
    </message>
    <message>
      <source>F7 reference</source>
      <translation>F7 consulta</translation>
    </message>
    <message>
      <source>F7: saturation table, chart, limits of any refrigerant</source>
      <translation>F7: tabla de saturación, gráfico, límites de cualquier refrigerante</translation>
    </message>
    <message>
      <source>F8 flags</source>
      <translation>F8 avisos</translation>
    </message>
    <message>
      <source>F9 worked out</source>
      <translation>F9 calculado</translation>
    </message>
    <message>
      <source>facility bought, its former owner used the other</source>
      <translation>instalación comprada, su dueño anterior usaba el otro</translation>
    </message>
    <message>
      <source>Factory charged and sealed</source>
      <translation>Cargado y sellado de fábrica</translation>
    </message>
    <message>
      <source>failed</source>
      <translation>no aprobada</translation>
    </message>
    <message>
      <source>faint</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>false</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>fatigue at the first bend</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Fault</source>
      <translation>Falla</translation>
    </message>
    <message>
      <source>Faults of a small degree do not show here.</source>
      <translation>Las fallas leves no se ven aquí.</translation>
    </message>
    <message>
      <source>fell</source>
      <translation>bajó</translation>
    </message>
    <message>
      <source>Field</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>figure</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>figures</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Figures of the shop's own, laid over the rule set; beside the shop's records.</source>
      <translation>Valores propios del taller, sobre el reglamento; junto a sus registros.</translation>
    </message>
    <message>
      <source>File</source>
      <translation>Archivo</translation>
    </message>
    <message>
      <source>file</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>File to write</source>
      <translation>Archivo que se escribe</translation>
    </message>
    <message>
      <source>file {path}</source>
      <translation>archivo {path}</translation>
    </message>
    <message>
      <source>fill</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Fill against limit</source>
      <translation>Llenado y límite</translation>
    </message>
    <message>
      <source>Fill: {share_words}</source>
      <translation>Llenado: {share_words}</translation>
    </message>
    <message>
      <source>filter drier</source>
      <translation>filtro secador</translation>
    </message>
    <message>
      <source>Filter-drier joints</source>
      <translation>Uniones del filtro secador</translation>
    </message>
    <message>
      <source>Find a cylinder or an instrument</source>
      <translation>Buscar un cilindro o instrumento</translation>
    </message>
    <message>
      <source>Find a job</source>
      <translation>Buscar un trabajo</translation>
    </message>
    <message>
      <source>Find a row</source>
      <translation>Buscar una fila</translation>
    </message>
    <message>
      <source>Find the leak</source>
      <translation>Busque la fuga</translation>
    </message>
    <message>
      <source>Find the leak; do not charge.</source>
      <translation>Busque la fuga; no cargue.</translation>
    </message>
    <message>
      <source>Findings</source>
      <translation>Hallazgos</translation>
    </message>
    <message>
      <source>findings</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>first</source>
      <translation>primera</translation>
    </message>
    <message>
      <source>Fl&amp;ags</source>
      <translation>&amp;Avisos</translation>
    </message>
    <message>
      <source>Flag</source>
      <translation>Aviso</translation>
    </message>
    <message>
      <source>Flags</source>
      <translation>Avisos</translation>
    </message>
    <message>
      <source>flags</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>flammability</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>flammable</source>
      <translation>inflamable</translation>
    </message>
    <message>
      <source>Flammable gases</source>
      <translation>Gases inflamables</translation>
    </message>
    <message>
      <source>Flare joints at both units</source>
      <translation>Uniones abocardadas en ambas unidades</translation>
    </message>
    <message>
      <source>flares</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Floor area of the room</source>
      <translation>Superficie del local</translation>
    </message>
    <message>
      <source>floor-area</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>fluorescent dye already present</source>
      <translation>tinte fluorescente ya presente</translation>
    </message>
    <message>
      <source>Fluorinated gas is recovered; hydrocarbons, carbon dioxide and ammonia are not fluorinated gases: other law and good practice decide.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Fluorinated gas is recovered; recovered gas is used again only recycled or reclaimed. Hydrocarbons, carbon dioxide and ammonia are not fluorinated gases: national law decides.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Folder to write into</source>
      <translation>Carpeta de destino</translation>
    </message>
    <message>
      <source>Follow-up</source>
      <translation>Seguimiento</translation>
    </message>
    <message>
      <source>follow-up</source>
      <translation>seguimiento</translation>
    </message>
    <message>
      <source>follow-up verification test</source>
      <translation>prueba de verificación de seguimiento</translation>
    </message>
    <message>
      <source>Follow-up was due on {due}: {what}</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>follow-up-due</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>fonts</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>foot</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>foot|feet|'|ft.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>for</source>
      <translation>a favor</translation>
    </message>
    <message>
      <source>for example {example}</source>
      <translation>por ejemplo {example}</translation>
    </message>
    <message>
      <source>foreign_keys=ON</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>format</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Found</source>
      <translation>Hallado</translation>
    </message>
    <message>
      <source>found</source>
      <translation>hallado</translation>
    </message>
    <message>
      <source>found above the assumed</source>
      <translation>hallado sobre lo supuesto</translation>
    </message>
    <message>
      <source>Found missing</source>
      <translation>Hallado de menos</translation>
    </message>
    <message>
      <source>Found over</source>
      <translation>Hallado de más</translation>
    </message>
    <message>
      <source>found tight</source>
      <translation>hallado estanco</translation>
    </message>
    <message>
      <source>Fro&amp;m</source>
      <translation>&amp;Desde</translation>
    </message>
    <message>
      <source>From</source>
      <translation>De</translation>
    </message>
    <message>
      <source>from</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>From &amp;file…</source>
      <translation>De un &amp;archivo…</translation>
    </message>
    <message>
      <source>From one cylinder into another, by the weight of the one on the scale.</source>
      <translation>De un cilindro a otro, por el peso del que está en la balanza.</translation>
    </message>
    <message>
      <source>From or to</source>
      <translation>De o a</translation>
    </message>
    <message>
      <source>from {since}</source>
      <translation>desde {since}</translation>
    </message>
    <message>
      <source>From, first day</source>
      <translation>Desde, primer día</translation>
    </message>
    <message>
      <source>Frost</source>
      <translation>Escarcha</translation>
    </message>
    <message>
      <source>frost</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>frost pattern</source>
      <translation>patrón de escarcha</translation>
    </message>
    <message>
      <source>ft**2</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>ft**3</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>ft2|sqft|sq ft</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>ft3|cu ft|cuft</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Full charge</source>
      <translation>Carga completa</translation>
    </message>
    <message>
      <source>full charge and equipment record</source>
      <translation>registro de carga completa y equipo</translation>
    </message>
    <message>
      <source>Full charge revised on</source>
      <translation>Carga completa revisada el</translation>
    </message>
    <message>
      <source>function</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>fusible plug, seals</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Fusion</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>F|degF|deg F|fahrenheit|ºF</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>F|degF|delta F|deltaF|R</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>g / year</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>g/y|g/a|g/year</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>gain</source>
      <translation>ganancia</translation>
    </message>
    <message>
      <source>gained</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Gas</source>
      <translation>Gas</translation>
    </message>
    <message>
      <source>gas</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Gauge</source>
      <translation>Manómetro</translation>
    </message>
    <message>
      <source>gauge</source>
      <translation>manómetro</translation>
    </message>
    <message>
      <source>Gauge at site</source>
      <translation>Manómetro en el sitio</translation>
    </message>
    <message>
      <source>Gauge pressures where the air has {zero}.</source>
      <translation>Presiones manométricas donde el aire tiene {zero}.</translation>
    </message>
    <message>
      <source>Gauge reading</source>
      <translation>Lectura del manómetro</translation>
    </message>
    <message>
      <source>Gauge resolution</source>
      <translation>Resolución del manómetro</translation>
    </message>
    <message>
      <source>Gauges connected</source>
      <translation>Manómetros conectados</translation>
    </message>
    <message>
      <source>generic</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Given by</source>
      <translation>Dado por</translation>
    </message>
    <message>
      <source>Given by {given_by}.</source>
      <translation>Dado por {given_by}.</translation>
    </message>
    <message>
      <source>Go back to a backup</source>
      <translation>Volver a una copia</translation>
    </message>
    <message>
      <source>Go back to a backup, or rescue what can be read</source>
      <translation>Volver a una copia o rescatar lo legible</translation>
    </message>
    <message>
      <source>Go back to a copy of this shop</source>
      <translation>Volver a una copia de este taller</translation>
    </message>
    <message>
      <source>Go on</source>
      <translation>Continuar</translation>
    </message>
    <message>
      <source>Go on for {minutes} more minutes.</source>
      <translation>Siga {minutes} minutos más.</translation>
    </message>
    <message>
      <source>Go to {other_number}</source>
      <translation>Ir a {other_number}</translation>
    </message>
    <message>
      <source>Goggles and gloves worn; liquid refrigerant freezes skin and eyes.</source>
      <translation>Gafas y guantes puestos; el refrigerante líquido congela piel y ojos.</translation>
    </message>
    <message>
      <source>gram</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>gram / meter ** 3</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>gram|grams|gr</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>gross</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Gross weight</source>
      <translation>Peso bruto</translation>
    </message>
    <message>
      <source>Ground</source>
      <translation>Motivo</translation>
    </message>
    <message>
      <source>ground</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>guards-mended</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Guide</source>
      <translation>Guía</translation>
    </message>
    <message>
      <source>guide</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>gwp</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>GWP {potential:g}</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>GWP, 100 years, {which}</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>halocarbon</source>
      <translation>halocarburo</translation>
    </message>
    <message>
      <source>Hand &amp;over…</source>
      <translation>&amp;Entregar…</translation>
    </message>
    <message>
      <source>handed-over</source>
      <translation>entregado</translation>
    </message>
    <message>
      <source>Handling checklist</source>
      <translation>Lista de manejo</translation>
    </message>
    <message>
      <source>Happened</source>
      <translation>Ocurrido</translation>
    </message>
    <message>
      <source>happened_at needs its zone</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Hardly any refrigerant reaches the coil.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Has no bearing on it.</source>
      <translation>No tiene relación con ello.</translation>
    </message>
    <message>
      <source>has no requalification date</source>
      <translation>no tiene fecha de recalificación</translation>
    </message>
    <message>
      <source>hash</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Hash, first digits</source>
      <translation>Hash, primeros dígitos</translation>
    </message>
    <message>
      <source>head</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Head pressure pushes more through a capillary tube, but slightly.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>headers</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Height above sea level</source>
      <translation>Altura sobre el mar</translation>
    </message>
    <message>
      <source>Height of a release</source>
      <translation>Altura de una liberación</translation>
    </message>
    <message>
      <source>Height of the room</source>
      <translation>Altura del local</translation>
    </message>
    <message>
      <source>Held after</source>
      <translation>Contenido después</translation>
    </message>
    <message>
      <source>Held against today's; a figure of another kind stands in words below.</source>
      <translation>Se compara con los de hoy; un valor de otro tipo va abajo en palabras.</translation>
    </message>
    <message>
      <source>Held for</source>
      <translation>Mantenido durante</translation>
    </message>
    <message>
      <source>Held-back liquid takes some surface, a starved coil brings less heat.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>here</source>
      <translation>aquí</translation>
    </message>
    <message>
      <source>HFC or GWP</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>HFO mass</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>high</source>
      <translation>alto</translation>
    </message>
    <message>
      <source>High head and dense suction load the compressor.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>High head loads the compressor.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>High head pressure hardly raises superheat.</source>
      <translation>La alta presión de condensación apenas sube el sobrecalentamiento.</translation>
    </message>
    <message>
      <source>High head pressure weakens the compressor's suction.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>High head would raise it.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>high side</source>
      <translation>lado de alta</translation>
    </message>
    <message>
      <source>High-side design pressure</source>
      <translation>Presión de diseño del lado de alta</translation>
    </message>
    <message>
      <source>higher</source>
      <translation>más alto</translation>
    </message>
    <message>
      <source>highly flammable</source>
      <translation>muy inflamable</translation>
    </message>
    <message>
      <source>History, newest first</source>
      <translation>Historial, lo más reciente primero</translation>
    </message>
    <message>
      <source>hold</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Hold to see {wanted}</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Hold {more} more minutes: the rule set wants {least}.</source>
      <translation>Mantenga {more} minutos más: el reglamento pide {least}.</translation>
    </message>
    <message>
      <source>Holds</source>
      <translation>Contiene</translation>
    </message>
    <message>
      <source>Holds from, to</source>
      <translation>Vale de, a</translation>
    </message>
    <message>
      <source>holds {held} of {limit}, {share_words} ({by}){gross}</source>
      <translation>contiene {held} de {limit}, {share_words} ({by}){gross}</translation>
    </message>
    <message>
      <source>holds {held}; no limit can be worked out without its water capacity</source>
      <translation>contiene {held}; sin su capacidad de agua no se puede calcular el límite</translation>
    </message>
    <message>
      <source>hose</source>
      <translation>manguera</translation>
    </message>
    <message>
      <source>Hose at the end</source>
      <translation>Manguera al final</translation>
    </message>
    <message>
      <source>Hose bore</source>
      <translation>Diámetro interior de la manguera</translation>
    </message>
    <message>
      <source>hose content</source>
      <translation>contenido de la manguera</translation>
    </message>
    <message>
      <source>Hose length</source>
      <translation>Largo de la manguera</translation>
    </message>
    <message>
      <source>Hose temperature</source>
      <translation>Temperatura de la manguera</translation>
    </message>
    <message>
      <source>Hose, share of the charge</source>
      <translation>Manguera, parte de la carga</translation>
    </message>
    <message>
      <source>hose-share</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Hoses are as short as will do, free of other refrigerant, and the cylinder stands as its valve needs it.</source>
      <translation>Las mangueras son lo más cortas posible, sin otro refrigerante, y el cilindro está como pide su válvula.</translation>
    </message>
    <message>
      <source>host</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>hot gas in the foam, if fitted</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>hour</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>household</source>
      <translation>doméstico</translation>
    </message>
    <message>
      <source>household refrigerator or freezer</source>
      <translation>refrigerador o congelador doméstico</translation>
    </message>
    <message>
      <source>How</source>
      <translation>Cómo</translation>
    </message>
    <message>
      <source>how</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>How a scale or gauge speaks, where it can be read straight from its port.</source>
      <translation>Cómo habla una balanza o un manómetro, donde puede leerse directamente de su puerto.</translation>
    </message>
    <message>
      <source>How far the chain of bench {bench} went can not be told; entry {last} is the last that was found.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>How it was settled</source>
      <translation>Cómo se resolvió</translation>
    </message>
    <message>
      <source>How the area is ventilated</source>
      <translation>Cómo se ventila el área</translation>
    </message>
    <message>
      <source>How the full charge is known</source>
      <translation>Cómo se conoce la carga completa</translation>
    </message>
    <message>
      <source>How the full charge was revised</source>
      <translation>Cómo se revisó la carga completa</translation>
    </message>
    <message>
      <source>How the range was found</source>
      <translation>Cómo se estableció el rango</translation>
    </message>
    <message>
      <source>how two of its components mix was estimated, not fitted</source>
      <translation>cómo se mezclan dos de sus componentes se estimó, no se ajustó</translation>
    </message>
    <message>
      <source>hr|hrs|hour|hours</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>hydrocarbon</source>
      <translation>hidrocarburo</translation>
    </message>
    <message>
      <source>Hydrocarbon ignites on surfaces from about 450 °C: heat guns, soldering irons and defrost heaters count.</source>
      <translation>El hidrocarburo se enciende en superficies desde unos 450 °C: cuentan pistolas de calor, soldadores y resistencias de descongelación.</translation>
    </message>
    <message>
      <source>iapfr</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Ice keeps the air out, whatever first caused it.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>ice machine</source>
      <translation>máquina de hielo</translation>
    </message>
    <message>
      <source>ice-pick holes, drain corrosion</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>iced solid</source>
      <translation>helado por completo</translation>
    </message>
    <message>
      <source>icons</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Id of the {register}</source>
      <translation>Identificador: {register}</translation>
    </message>
    <message>
      <source>id or part of the name</source>
      <translation>identificador o parte del nombre</translation>
    </message>
    <message>
      <source>Id, as on its label</source>
      <translation>Identificador, como en la etiqueta</translation>
    </message>
    <message>
      <source>idle</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>if a heat pump</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>If all leaked into the room</source>
      <translation>Si todo se fugara al local</translation>
    </message>
    <message>
      <source>If all leaked into the room, share of the lower flammable limit</source>
      <translation>Si todo se fugara al local, parte del límite inferior de inflamabilidad</translation>
    </message>
    <message>
      <source>If it is released instead: outdoors, slowly, away from drains and openings, and only where the rule set's exemption names this equipment.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>If not this shop.</source>
      <translation>Si no es este taller.</translation>
    </message>
    <message>
      <source>If not, it does only of people who have set one.</source>
      <translation>Si no, solo de las personas que la hayan fijado.</translation>
    </message>
    <message>
      <source>If the circuit must be opened, a workshop was preferred to the customer's rooms.</source>
      <translation>Si hay que abrir el circuito, se prefirió un taller a los locales del cliente.</translation>
    </message>
    <message>
      <source>ignition</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>In a residential building</source>
      <translation>En un edificio residencial</translation>
    </message>
    <message>
      <source>in before</source>
      <translation>había antes</translation>
    </message>
    <message>
      <source>in it</source>
      <translation>dentro</translation>
    </message>
    <message>
      <source>in none</source>
      <translation>en ninguno</translation>
    </message>
    <message>
      <source>In steps of</source>
      <translation>En pasos de</translation>
    </message>
    <message>
      <source>in the hose</source>
      <translation>en la manguera</translation>
    </message>
    <message>
      <source>In words</source>
      <translation>En palabras</translation>
    </message>
    <message>
      <source>In {charged} of {nameplate}: {verdict} (±{expanded}, k = 2).</source>
      <translation>Dentro {charged} de {nameplate}: {verdict} (±{expanded}, k = 2).</translation>
    </message>
    <message>
      <source>in {count}</source>
      <translation>en {count}</translation>
    </message>
    <message>
      <source>in {span}, {due}</source>
      <translation>en {span}, {due}</translation>
    </message>
    <message>
      <source>in2|sqin|sq in</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>in3|cu in|cuin</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>inch</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>inch**2</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>inch**3</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>inch|inches|"|in.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>industrial process</source>
      <translation>proceso industrial</translation>
    </message>
    <message>
      <source>inHg vac</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>inHg vacuum</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>inHg(a)</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>inHga|inHgabs|inHg(abs)</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>initial</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>initial verification test</source>
      <translation>prueba de verificación inicial</translation>
    </message>
    <message>
      <source>Initial: before refrigerant goes back in. Follow-up: running as normal.</source>
      <translation>Inicial: antes de volver a poner refrigerante. De seguimiento: en marcha normal.</translation>
    </message>
    <message>
      <source>installation</source>
      <translation>instalación</translation>
    </message>
    <message>
      <source>installed</source>
      <translation>instalado</translation>
    </message>
    <message>
      <source>Installed on</source>
      <translation>Instalado el</translation>
    </message>
    <message>
      <source>Instrument</source>
      <translation>Instrumento</translation>
    </message>
    <message>
      <source>instrument</source>
      <translation>instrumento</translation>
    </message>
    <message>
      <source>Instruments</source>
      <translation>Instrumentos</translation>
    </message>
    <message>
      <source>Internal volume</source>
      <translation>Volumen interno</translation>
    </message>
    <message>
      <source>Into</source>
      <translation>En</translation>
    </message>
    <message>
      <source>into</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>into an evacuated system</source>
      <translation>en un sistema evacuado</translation>
    </message>
    <message>
      <source>Into the file</source>
      <translation>En el archivo</translation>
    </message>
    <message>
      <source>Into the folder</source>
      <translation>En la carpeta</translation>
    </message>
    <message>
      <source>invoice</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Invoice or delivery note</source>
      <translation>Factura o nota de entrega</translation>
    </message>
    <message>
      <source>is another file now</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>is damaged: it does not say its {key}. Have its administrator restore a backup.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>is damaged: it does not say its {key}. Restore the newest backup.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>is gone</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Isolate the pump</source>
      <translation>Aísle la bomba</translation>
    </message>
    <message>
      <source>Isolate the pump and read the gauge: a decay test needs at least three readings.</source>
      <translation>Aísle la bomba y lea el manómetro: una prueba de mantenimiento de vacío necesita al menos tres lecturas.</translation>
    </message>
    <message>
      <source>Isolated at</source>
      <translation>Aislado a las</translation>
    </message>
    <message>
      <source>Isolation valves: stems and caps</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>It belongs to a job that no entry before it opened.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>it can not be read</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>It can not show who sat at the bench: names are as signed, not proven.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>It computes, records and flags. Local codes, the equipment maker's instructions and a licensed person's judgement come first.</source>
      <translation>Calcula, registra y avisa. Los códigos locales, las instrucciones del fabricante y el criterio de una persona autorizada van primero.</translation>
    </message>
    <message>
      <source>it does not hold the tables of a shop</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>It does not say which entries it took in.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>it is damaged on its server. Tell its administrator, who can rebuild its indexes</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>it is damaged on its server. Tell its administrator, who can restore a backup</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>it is damaged. Restore the newest backup, the present file is kept aside; or bring what can be read of both into a new file: chargebench rescue --shop OLD --out NEW</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>It is not what this program signs as “{kind}” ({problem}). If that bench runs a newer chargebench, take the file in with one.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>It levels off, but above the vapour pressure of water at the temperature given: not water alone. Refrigerant out of the oil or a leak stays possible.</source>
      <translation>Se nivela, pero sobre la presión de vapor del agua a la temperatura dada: no es solo agua. Refrigerante del aceite o una fuga siguen siendo posibles.</translation>
    </message>
    <message>
      <source>It may have gone with hose connections: each takes what the hose holds.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>It may never have been charged right: a short weigh-in leaves the same figure.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>It names no job.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>it or its folder can not be written to. Move it to a folder you may write in, or change its rights</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>it sees from {sees} {label}; the loss is {lost} {label}.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>it was overcharged, or something else than this refrigerant came with it.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>It was seen to be clean, as far as one can look in.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>its fill limit</source>
      <translation>su límite de llenado</translation>
    </message>
    <message>
      <source>its server asks for a password. Keep it in this computer's password file for PostgreSQL (.pgpass), or write it into the address</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>its server cut the work short. Do it again, or ask its administrator</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>its server does not answer. Check the network, or ask who looks after the server</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>its server is at the end of its means. Close what else uses it, or try later</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>its server only lets read at present. Ask its administrator</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>its server refuses: {said}. Ask who looks after it</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Its vapour is heavier than air and sinks.</source>
      <translation>Su vapor es más pesado que el aire y baja.</translation>
    </message>
    <message>
      <source>Its vapour is lighter than air and rises.</source>
      <translation>Su vapor es más liviano que el aire y sube.</translation>
    </message>
    <message>
      <source>Job</source>
      <translation>Trabajo</translation>
    </message>
    <message>
      <source>job</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Job and chain files (*.json *.chain);;All files (*)</source>
      <translation>Archivos de trabajo y de cadena (*.json *.chain);;Todos los archivos (*)</translation>
    </message>
    <message>
      <source>job closed</source>
      <translation>trabajo cerrado</translation>
    </message>
    <message>
      <source>Job closed.</source>
      <translation>Trabajo cerrado.</translation>
    </message>
    <message>
      <source>job files</source>
      <translation>archivos de trabajo</translation>
    </message>
    <message>
      <source>Job open again.</source>
      <translation>Trabajo abierto de nuevo.</translation>
    </message>
    <message>
      <source>job opened</source>
      <translation>trabajo abierto</translation>
    </message>
    <message>
      <source>job reopened</source>
      <translation>trabajo reabierto</translation>
    </message>
    <message>
      <source>Job report</source>
      <translation>Informe del trabajo</translation>
    </message>
    <message>
      <source>Job reports</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>job reports</source>
      <translation>informes de trabajo</translation>
    </message>
    <message>
      <source>Job {job_number} is closed. Reopen it with a reason, or record a follow-up.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Job {job_number} is open already.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Job {job} is not what its entries say of it.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>job, equipment, site, refrigerant</source>
      <translation>trabajo, equipo, sitio, refrigerante</translation>
    </message>
    <message>
      <source>job, step</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>job-closed</source>
      <translation>trabajo cerrado</translation>
    </message>
    <message>
      <source>job-opened</source>
      <translation>trabajo abierto</translation>
    </message>
    <message>
      <source>job-reopened</source>
      <translation>trabajo reabierto</translation>
    </message>
    <message>
      <source>job.steps[{number}] ({step}): {refusal}</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Jobs</source>
      <translation>Trabajos</translation>
    </message>
    <message>
      <source>jobs</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>jobs closed in {month}</source>
      <translation>trabajos cerrados en {month}</translation>
    </message>
    <message>
      <source>Join a shop</source>
      <translation>Unirse a un taller</translation>
    </message>
    <message>
      <source>Joints soaped meanwhile</source>
      <translation>Uniones enjabonadas mientras tanto</translation>
    </message>
    <message>
      <source>Judged by {called}.</source>
      <translation>Juzgado según {called}.</translation>
    </message>
    <message>
      <source>jurisdiction</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>k = 2, about 95 %</source>
      <translation>k = 2, aproximadamente 95 %</translation>
    </message>
    <message>
      <source>kbf</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>kelvin</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>kelvin|°C|C|degC|delta C|deltaC</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>kept long enough</source>
      <translation>conservado el tiempo debido</translation>
    </message>
    <message>
      <source>Kept on this computer; counts once this page is closed.</source>
      <translation>Se guarda en este equipo; vale al cerrar esta página.</translation>
    </message>
    <message>
      <source>key</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Keys</source>
      <translation>Teclas</translation>
    </message>
    <message>
      <source>keys</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>kg / m**3</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>kg / year</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>kg/m**3</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>kg/y|kg/a|kg/year</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>kilogram</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>kilogram / meter ** 3</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>kilogram|kilograms|kilo|kilos</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>kilopascal</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Kind</source>
      <translation>Tipo</translation>
    </message>
    <message>
      <source>kind</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Kind of work</source>
      <translation>Tipo de trabajo</translation>
    </message>
    <message>
      <source>Knowing release is prohibited; small losses in good-faith recovery with certified machine and technician are not counted.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>known</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>kpa</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>kPaa|kPaabs|kPa(abs)</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>kPag|kPagauge</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>La&amp;bel…</source>
      <translation>Eti&amp;queta…</translation>
    </message>
    <message>
      <source>Label</source>
      <translation>Etiqueta</translation>
    </message>
    <message>
      <source>Label on a sheet</source>
      <translation>Etiqueta en una hoja</translation>
    </message>
    <message>
      <source>Labelled hermetically sealed</source>
      <translation>Etiquetado como herméticamente sellado</translation>
    </message>
    <message>
      <source>labels</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Labels and markings in place</source>
      <translation>Etiquetas y marcas en su lugar</translation>
    </message>
    <message>
      <source>Labels of all that are listed</source>
      <translation>Etiquetas de todos los listados</translation>
    </message>
    <message>
      <source>Language</source>
      <translation>Idioma</translation>
    </message>
    <message>
      <source>language</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>largest error in proportion to the mass</source>
      <translation>mayor error en proporción a la masa</translation>
    </message>
    <message>
      <source>Largest fit error</source>
      <translation>Mayor error de ajuste</translation>
    </message>
    <message>
      <source>Larkmoor Cold</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>last</source>
      <translation>última</translation>
    </message>
    <message>
      <source>last 12 months</source>
      <translation>últimos 12 meses</translation>
    </message>
    <message>
      <source>Last added</source>
      <translation>Última adición</translation>
    </message>
    <message>
      <source>Last calibrated</source>
      <translation>Última calibración</translation>
    </message>
    <message>
      <source>Last known full on</source>
      <translation>Última vez lleno, el</translation>
    </message>
    <message>
      <source>Last requalified</source>
      <translation>Última recalificación</translation>
    </message>
    <message>
      <source>Last weighed</source>
      <translation>Último pesaje</translation>
    </message>
    <message>
      <source>last weighed {last}</source>
      <translation>último pesaje {last}</translation>
    </message>
    <message>
      <source>last year</source>
      <translation>el año pasado</translation>
    </message>
    <message>
      <source>later</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>lb / ft**3</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>lb / year</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>lb/ft**3</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>lb/y|lb/year</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>lbs|pound|pounds|lb.|lbs.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>leak</source>
      <translation>fuga</translation>
    </message>
    <message>
      <source>leak check</source>
      <translation>control de fugas</translation>
    </message>
    <message>
      <source>Leak check owed every</source>
      <translation>Control de fugas debido cada</translation>
    </message>
    <message>
      <source>Leak checked after charging and before leaving</source>
      <translation>Fugas revisadas tras cargar y antes de irse</translation>
    </message>
    <message>
      <source>leak checks</source>
      <translation>controles de fugas</translation>
    </message>
    <message>
      <source>leak detection system check</source>
      <translation>revisión de la detección de fugas</translation>
    </message>
    <message>
      <source>Leak detection system fitted</source>
      <translation>Sistema de detección de fugas instalado</translation>
    </message>
    <message>
      <source>leak detector</source>
      <translation>detector de fugas</translation>
    </message>
    <message>
      <source>leak inspection</source>
      <translation>inspección de fugas</translation>
    </message>
    <message>
      <source>Leak rate method</source>
      <translation>Método de tasa de fuga</translation>
    </message>
    <message>
      <source>leak rate method changed</source>
      <translation>método de tasa de fuga cambiado</translation>
    </message>
    <message>
      <source>Leak rates</source>
      <translation>Tasas de fuga</translation>
    </message>
    <message>
      <source>Leak search</source>
      <translation>Búsqueda de fugas</translation>
    </message>
    <message>
      <source>Leak search and pressure test</source>
      <translation>Búsqueda de fugas y prueba de presión</translation>
    </message>
    <message>
      <source>Leak that can not be excluded</source>
      <translation>Fuga que no puede excluirse</translation>
    </message>
    <message>
      <source>leak-check</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>leak-method-changed</source>
      <translation>método de tasa de fuga cambiado</translation>
    </message>
    <message>
      <source>leak-not-verified</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>leak-open</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>leak-rate-over</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>leak-search</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>leaks</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Leaks found</source>
      <translation>Fugas halladas</translation>
    </message>
    <message>
      <source>Leave empty where it replaces what leaked.</source>
      <translation>Deje vacío donde reemplaza lo que se fugó.</translation>
    </message>
    <message>
      <source>Leave them</source>
      <translation>Dejarlas</translation>
    </message>
    <message>
      <source>Left</source>
      <translation>Queda</translation>
    </message>
    <message>
      <source>left</source>
      <translation>queda</translation>
    </message>
    <message>
      <source>Left in hoses</source>
      <translation>Quedó en mangueras</translation>
    </message>
    <message>
      <source>Left in the hose</source>
      <translation>Quedó en la manguera</translation>
    </message>
    <message>
      <source>left in the hose</source>
      <translation>quedó en la manguera</translation>
    </message>
    <message>
      <source>left in {cylinder}</source>
      <translation>queda en {cylinder}</translation>
    </message>
    <message>
      <source>left off</source>
      <translation>dejado apagado</translation>
    </message>
    <message>
      <source>left running</source>
      <translation>dejado en marcha</translation>
    </message>
    <message>
      <source>left to be found out</source>
      <translation>queda por averiguar</translation>
    </message>
    <message>
      <source>length</source>
      <translation>longitud</translation>
    </message>
    <message>
      <source>Less</source>
      <translation>Menos</translation>
    </message>
    <message>
      <source>less</source>
      <translation>menos</translation>
    </message>
    <message>
      <source>Less heat taken up means less to shed.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Letter</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>letter, file or claim number</source>
      <translation>carta, archivo o número de reclamo</translation>
    </message>
    <message>
      <source>Level</source>
      <translation>Nivel</translation>
    </message>
    <message>
      <source>level</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Level reached</source>
      <translation>Nivel alcanzado</translation>
    </message>
    <message>
      <source>levels</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>lfl</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Light</source>
      <translation>Claro</translation>
    </message>
    <message>
      <source>light</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Light or dark</source>
      <translation>Claro u oscuro</translation>
    </message>
    <message>
      <source>limit not known</source>
      <translation>límite desconocido</translation>
    </message>
    <message>
      <source>limits</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Limits and duties of one jurisdiction.</source>
      <translation>Límites y deberes de una jurisdicción.</translation>
    </message>
    <message>
      <source>Line</source>
      <translation>Línea</translation>
    </message>
    <message>
      <source>line</source>
      <translation>recta</translation>
    </message>
    <message>
      <source>line + exponential</source>
      <translation>recta + exponencial</translation>
    </message>
    <message>
      <source>line + {bend}</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Line set between the units</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>line {lineno}, character {colno}: This is not JSON; look for a missing comma, quote or bracket.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>line {lineno}: The file ends in the middle; it was cut short. Copy it again from where it came from.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Line {number}: expected a later time than the line before; got “{time}”.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Line {number}: expected a time and a reading; got “{line}”.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Line {number}: expected a time like the one in the first line; got “{text}”.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Line {number}: expected two columns; the comma in “{line}” may be a decimal mark. Part the columns by semicolon or tab.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Line {number}: expected {kind} with its unit, such as {example}; got “{text}”. Write the unit in the cell or in the head of the column, as in pressure [micron].</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Line {number}: expected {wanted}; got {cells}.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Line {number}: {refusal}</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>line {number}: {what}</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>line-set</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>lines</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Lines as they come</source>
      <translation>Líneas según llegan</translation>
    </message>
    <message>
      <source>Lines come from {port} but are not understood. {refusal}</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>lines[0].start</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>liquid</source>
      <translation>líquido</translation>
    </message>
    <message>
      <source>Liquid [{density}]</source>
      <translation>Líquido [{density}]</translation>
    </message>
    <message>
      <source>Liquid and vapour have the same composition.</source>
      <translation>Líquido y vapor tienen la misma composición.</translation>
    </message>
    <message>
      <source>Liquid comes past the coil.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>liquid density</source>
      <translation>densidad del líquido</translation>
    </message>
    <message>
      <source>liquid full at hot temperature</source>
      <translation>lleno de líquido a temperatura alta</translation>
    </message>
    <message>
      <source>Liquid is used up soon after the inlet.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Liquid line temperature</source>
      <translation>Temperatura de la línea de líquido</translation>
    </message>
    <message>
      <source>liquid line temperature</source>
      <translation>temperatura de la línea de líquido</translation>
    </message>
    <message>
      <source>liquid or vapour</source>
      <translation>líquido o vapor</translation>
    </message>
    <message>
      <source>Liquid reaches the whole coil.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Liquid stands in the condenser as it should; on a capillary tube that proves less.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Liquid stands in the condenser: there is some to spare.</source>
      <translation>Hay líquido en el condensador: sobra algo.</translation>
    </message>
    <message>
      <source>Liquid that can not pass on is held back in the condenser.</source>
      <translation>El líquido que no puede pasar se retiene en el condensador.</translation>
    </message>
    <message>
      <source>Liquid that cools across the drier is being throttled there.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Listen to a practice instrument of this program instead</source>
      <translation>Escuchar en su lugar un instrumento de práctica de este programa</translation>
    </message>
    <message>
      <source>Listening at {port}.</source>
      <translation>Escuchando en {port}.</translation>
    </message>
    <message>
      <source>Little comes out to be found below {pressure} gauge.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Little gas to pump means little current.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Little heat taken up, little to shed.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Little refrigerant goes round, so there is little heat to shed.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>live</source>
      <translation>en vivo</translation>
    </message>
    <message>
      <source>Local codes, the maker's instructions and a licensed person's judgement go before this list.</source>
      <translation>Los códigos locales, las instrucciones del fabricante y el criterio de una persona autorizada van antes que esta lista.</translation>
    </message>
    <message>
      <source>Lock</source>
      <translation>Bloquear</translation>
    </message>
    <message>
      <source>Lock now</source>
      <translation>Bloquear ahora</translation>
    </message>
    <message>
      <source>Locked</source>
      <translation>Bloqueado</translation>
    </message>
    <message>
      <source>Locked after a while without a key; the next signature asks again.</source>
      <translation>Bloqueado tras un rato sin teclas; la próxima firma pregunta de nuevo.</translation>
    </message>
    <message>
      <source>Locked: unlock</source>
      <translation>Bloqueado: desbloquear</translation>
    </message>
    <message>
      <source>Locked; the next signature of {name} asks for the passphrase.</source>
      <translation>Bloqueado; la próxima firma de {name} pide la contraseña.</translation>
    </message>
    <message>
      <source>log rise</source>
      <translation>subida logarítmica</translation>
    </message>
    <message>
      <source>long text</source>
      <translation>texto largo</translation>
    </message>
    <message>
      <source>look</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Look again</source>
      <translation>Buscar de nuevo</translation>
    </message>
    <message>
      <source>Look at both, put right what is wrong, then {settle}.</source>
      <translation>Mire ambos, corrija lo que esté mal y luego {settle}.</translation>
    </message>
    <message>
      <source>Look for a rule &amp;file…</source>
      <translation>Buscar un &amp;archivo de reglas…</translation>
    </message>
    <message>
      <source>Look for ports again, as after plugging an adapter in</source>
      <translation>Buscar puertos de nuevo, por ejemplo tras conectar un adaptador</translation>
    </message>
    <message>
      <source>Looked at on</source>
      <translation>Mirado el</translation>
    </message>
    <message>
      <source>loss</source>
      <translation>pérdida</translation>
    </message>
    <message>
      <source>Loss it is to see</source>
      <translation>Pérdida que debe ver</translation>
    </message>
    <message>
      <source>loss per year</source>
      <translation>pérdida al año</translation>
    </message>
    <message>
      <source>lost</source>
      <translation>perdido</translation>
    </message>
    <message>
      <source>low</source>
      <translation>bajo</translation>
    </message>
    <message>
      <source>low charge</source>
      <translation>carga baja</translation>
    </message>
    <message>
      <source>low side</source>
      <translation>lado de baja</translation>
    </message>
    <message>
      <source>Low suction lowers it, but seldom as far.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Low suction means little current.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Low-side design pressure</source>
      <translation>Presión de diseño del lado de baja</translation>
    </message>
    <message>
      <source>lower</source>
      <translation>más bajo</translation>
    </message>
    <message>
      <source>Lower flammable limit</source>
      <translation>Límite inferior de inflamabilidad</translation>
    </message>
    <message>
      <source>Lower flammable limit by volume</source>
      <translation>Límite inferior de inflamabilidad en volumen</translation>
    </message>
    <message>
      <source>l|litre|liter|litres|liters|dm3</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>m2|sqm|sq m</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>m3|cubic metre</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>machine</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Made</source>
      <translation>Hecha</translation>
    </message>
    <message>
      <source>made</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Made on</source>
      <translation>Fabricado el</translation>
    </message>
    <message>
      <source>main</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>maintenance or service</source>
      <translation>mantenimiento o servicio</translation>
    </message>
    <message>
      <source>Make</source>
      <translation>Marca</translation>
    </message>
    <message>
      <source>make</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Maker</source>
      <translation>Fabricante</translation>
    </message>
    <message>
      <source>maker</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Maker's figures</source>
      <translation>Valores del fabricante</translation>
    </message>
    <message>
      <source>mark</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>mark the start</source>
      <translation>marcar el inicio</translation>
    </message>
    <message>
      <source>Mark the start first: press space at the reading it begins from.</source>
      <translation>Marque primero el inicio: pulse espacio en la lectura desde la que empieza.</translation>
    </message>
    <message>
      <source>Mark when it &amp;moves</source>
      <translation>Marca en &amp;movimiento</translation>
    </message>
    <message>
      <source>Mark when it &amp;rests</source>
      <translation>Marca en &amp;reposo</translation>
    </message>
    <message>
      <source>Mass</source>
      <translation>Masa</translation>
    </message>
    <message>
      <source>mass</source>
      <translation>masa</translation>
    </message>
    <message>
      <source>Mass released</source>
      <translation>Masa liberada</translation>
    </message>
    <message>
      <source>may be archived</source>
      <translation>puede archivarse</translation>
    </message>
    <message>
      <source>may have seen it or not</source>
      <translation>pudo verla o no</translation>
    </message>
    <message>
      <source>mbar</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>mbar(a)|mbara</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>measure</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>media</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>medium</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Mend the fan first: until then the other readings mislead.</source>
      <translation>Repare primero el ventilador: hasta entonces las demás lecturas engañan.</translation>
    </message>
    <message>
      <source>met</source>
      <translation>cumplido</translation>
    </message>
    <message>
      <source>met-twice</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>metering</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Method</source>
      <translation>Método</translation>
    </message>
    <message>
      <source>method</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>metre|meter|metres|meters</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>micron</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>micron_Hg / minute</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>micron_Hg = 1e-3 * millimeter_Hg</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>microns|µmHg|umHg|µm|mTorr</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>mildly flammable</source>
      <translation>ligeramente inflamable</translation>
    </message>
    <message>
      <source>milliamp|milliamps</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>milligram</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>milligram|milligrams</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>millimetre|millimeter</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>milliseconds</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>min</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Mind: {text}</source>
      <translation>Atención: {text}</translation>
    </message>
    <message>
      <source>Mind: {text} {source}</source>
      <translation>Atención: {text} {source}</translation>
    </message>
    <message>
      <source>minute</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>minutes</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>minutes-more</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>minute|minutes|mins</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>missing</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Missing since last full</source>
      <translation>Falta desde la última vez lleno</translation>
    </message>
    <message>
      <source>mixed</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>mixed waste</source>
      <translation>residuos mezclados</translation>
    </message>
    <message>
      <source>ml|cc|cm3</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>mmHg(a)</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Model</source>
      <translation>Modelo</translation>
    </message>
    <message>
      <source>model</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>moisture</source>
      <translation>humedad</translation>
    </message>
    <message>
      <source>Molar mass</source>
      <translation>Masa molar</translation>
    </message>
    <message>
      <source>month</source>
      <translation>mes</translation>
    </message>
    <message>
      <source>more</source>
      <translation>más</translation>
    </message>
    <message>
      <source>More came out than the nameplate holds: {reason}</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>More than one number in this line could be the reading.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>more than the nameplate</source>
      <translation>más que la placa</translation>
    </message>
    <message>
      <source>More time for the repair</source>
      <translation>Más tiempo para la reparación</translation>
    </message>
    <message>
      <source>mothballed</source>
      <translation>parado</translation>
    </message>
    <message>
      <source>mothballed for {days} days</source>
      <translation>parado {days} días</translation>
    </message>
    <message>
      <source>Mothballed since</source>
      <translation>Parado desde</translation>
    </message>
    <message>
      <source>Mothballed until</source>
      <translation>Parado hasta</translation>
    </message>
    <message>
      <source>Moved</source>
      <translation>Movido</translation>
    </message>
    <message>
      <source>moved</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>moves</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>moving</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Moving air thins a leak below what is seen.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>mpa</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>MPaa|MPaabs|MPa(abs)</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>MPag|MPagauge</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Name</source>
      <translation>Nombre</translation>
    </message>
    <message>
      <source>name</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Name and address of the facility.</source>
      <translation>Nombre y dirección de la instalación.</translation>
    </message>
    <message>
      <source>Nameplate</source>
      <translation>Placa de características</translation>
    </message>
    <message>
      <source>nameplate</source>
      <translation>placa de características</translation>
    </message>
    <message>
      <source>Nameplate and markings read: refrigerant, charge, and the red mark on service port or process tube.</source>
      <translation>Placa y marcas leídas: refrigerante, carga y la marca roja en la conexión de servicio o tubo de proceso.</translation>
    </message>
    <message>
      <source>Nameplate charge</source>
      <translation>Carga de la placa</translation>
    </message>
    <message>
      <source>nameplate {charge}{also}</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Nameplate {nameplate} is over the charge limit of {limit} ({title}) by {over}. Check nameplate and type; local codes decide.</source>
      <translation>La placa de {nameplate} supera el límite de carga de {limit} ({title}) por {over}. Revise placa y tipo; deciden los códigos locales.</translation>
    </message>
    <message>
      <source>nameplate {view}</source>
      <translation>placa {view}</translation>
    </message>
    <message>
      <source>nameplate-differs</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>natural</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>near</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Near its limit: {figures}</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>needed</source>
      <translation>necesario</translation>
    </message>
    <message>
      <source>Net mass</source>
      <translation>Masa neta</translation>
    </message>
    <message>
      <source>Net mass as invoiced</source>
      <translation>Masa neta según factura</translation>
    </message>
    <message>
      <source>never</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Never above the lowest design pressure on the nameplate of the side under test.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>never weighed here</source>
      <translation>nunca pesado aquí</translation>
    </message>
    <message>
      <source>New</source>
      <translation>Nuevo</translation>
    </message>
    <message>
      <source>new</source>
      <translation>nuevo</translation>
    </message>
    <message>
      <source>new installation</source>
      <translation>instalación nueva</translation>
    </message>
    <message>
      <source>New job</source>
      <translation>Nuevo trabajo</translation>
    </message>
    <message>
      <source>New one &amp;again</source>
      <translation>Nueva &amp;otra vez</translation>
    </message>
    <message>
      <source>New {register} …</source>
      <translation>Nuevo: {register} …</translation>
    </message>
    <message>
      <source>Next reading in {clock}</source>
      <translation>Próxima lectura en {clock}</translation>
    </message>
    <message>
      <source>Next step</source>
      <translation>Paso siguiente</translation>
    </message>
    <message>
      <source>Next: {measure}. {reason}{hose}</source>
      <translation>Sigue: {measure}. {reason}{hose}</translation>
    </message>
    <message>
      <source>Nitrogen</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>nitrogen</source>
      <translation>nitrógeno</translation>
    </message>
    <message>
      <source>Nitrogen alone first, then nitrogen with a trace of R22, pure refrigerant last.</source>
      <translation>Primero nitrógeno solo, luego nitrógeno con una traza de R22, refrigerante puro al final.</translation>
    </message>
    <message>
      <source>Nitrogen alone first; a trace gas only where the law and the maker allow it.</source>
      <translation>Primero nitrógeno solo; un gas trazador solo donde la ley y el fabricante lo permiten.</translation>
    </message>
    <message>
      <source>Nitrogen flows before and while brazing; the process tube is cut, not unbrazed, where that will do.</source>
      <translation>El nitrógeno fluye antes y durante la soldadura; el tubo de proceso se corta, no se desuelda, donde basta.</translation>
    </message>
    <message>
      <source>nitrogen with trace gas</source>
      <translation>nitrógeno con gas trazador</translation>
    </message>
    <message>
      <source>no addition since: presumed repaired</source>
      <translation>nada añadido desde entonces: se presume reparado</translation>
    </message>
    <message>
      <source>no cylinders</source>
      <translation>ningún cilindro</translation>
    </message>
    <message>
      <source>No cylinders yet. Every gram comes from one and goes to one. Press New cylinder to put the first on the register, then receive what is in it.</source>
      <translation>Aún no hay cilindros. Cada gramo viene de uno y va a uno. Pulse Nuevo cilindro para poner el primero en el catálogo y luego reciba lo que contiene.</translation>
    </message>
    <message>
      <source>No entry is known to be missing.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>No equipment yet. Leak rates are worked out for each equipment from what was added to it. Start a job on the Bench to put the first on the register.</source>
      <translation>Aún no hay equipos. Las tasas de fuga se calculan para cada equipo con lo que se le añadió. Inicie un trabajo en el banco para poner el primero en el catálogo.</translation>
    </message>
    <message>
      <source>No exemption of this rule set covers this release. Recover instead; ask the authority where in doubt.</source>
      <translation>Ninguna exención de este reglamento cubre esta liberación. Recupere en su lugar; en caso de duda pregunte a la autoridad.</translation>
    </message>
    <message>
      <source>No finer scale alone would decide: repeatability, gain or hose doubt are too large.</source>
      <translation>Ninguna balanza más fina decidiría por sí sola: repetibilidad, ganancia o duda de la manguera son demasiado grandes.</translation>
    </message>
    <message>
      <source>No flags on this job.</source>
      <translation>Sin avisos en este trabajo.</translation>
    </message>
    <message>
      <source>No flags: nothing here asks for attention.</source>
      <translation>Sin avisos: nada pide atención aquí.</translation>
    </message>
    <message>
      <source>No flame, smoking, spark, hot surface or static source near; one maker asks for ten metres. Others in the area are told.</source>
      <translation>Sin llama, cigarrillo, chispa, superficie caliente ni fuente estática cerca; un fabricante pide diez metros. Se avisó a los demás en el área.</translation>
    </message>
    <message>
      <source>No fluorinated gas as a tracer; nitrogen, or nitrogen with a trace of hydrogen made for it.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>No fluorinated or other organohalogen gas as a tracer; nitrogen, or nitrogen with a gas that is none.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>No gas density of {name} there: {refused}.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>No halide torch, and no cleaning agent with chlorine on copper joints.</source>
      <translation>Sin antorcha de haluro ni limpiador con cloro en uniones de cobre.</translation>
    </message>
    <message>
      <source>no hose, closed at the equipment</source>
      <translation>sin manguera, cerrada en el equipo</translation>
    </message>
    <message>
      <source>No instruments yet. A weigh-in asks for a scale with its resolution, a test for its gauge. Press New instrument to put the first on the register.</source>
      <translation>Aún no hay instrumentos. Una carga por peso pide una balanza con su resolución, una prueba su manómetro. Pulse Nuevo instrumento para poner el primero en el catálogo.</translation>
    </message>
    <message>
      <source>No job here fits. Look for another word, or among closed jobs.</source>
      <translation>Ningún trabajo coincide. Busque otra palabra o entre los trabajos cerrados.</translation>
    </message>
    <message>
      <source>No jobs yet. A job is one visit or repair on one equipment, from the nameplate to the label. Press New job (Ctrl+N) to start the first.</source>
      <translation>Aún no hay trabajos. Un trabajo es una visita o reparación en un equipo, desde la placa hasta la etiqueta. Pulse Nuevo trabajo (Ctrl+N) para empezar el primero.</translation>
    </message>
    <message>
      <source>No leak repair regulation binds it.</source>
      <translation>Ninguna norma de reparación de fugas lo obliga.</translation>
    </message>
    <message>
      <source>no leak seen</source>
      <translation>ninguna fuga vista</translation>
    </message>
    <message>
      <source>No mass moved in this period. Each gram received, charged, recovered or returned stands here once it is signed. Choose another period, or sign a step on the Bench.</source>
      <translation>En este período no se movió masa. Cada gramo recibido, cargado, recuperado o devuelto aparece aquí en cuanto se firma. Elija otro período o firme un paso en el banco.</translation>
    </message>
    <message>
      <source>No more than the nameplate charge goes in, by weight.</source>
      <translation>No entra más que la carga de la placa, por peso.</translation>
    </message>
    <message>
      <source>No number in this line.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>No passphrase was set; set one first.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>no password supplied</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>No photo yet. Say what it shows, then add a file, paste a picture, or drag one here: nameplate, leak, label.</source>
      <translation>Aún sin fotos. Diga qué muestra y añada un archivo, pegue una imagen o arrástrela aquí: placa, fuga, etiqueta.</translation>
    </message>
    <message>
      <source>No printer is set up.</source>
      <translation>No hay impresora configurada.</translation>
    </message>
    <message>
      <source>No recovery level for pressure class “{pressure_class}” at this charge; expected very high, high, medium or low.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>no row for pressure class “{name}”.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>No row is a verdict: readings support a fault or speak against it, none proves it.</source>
      <translation>Ninguna fila es un veredicto: las lecturas apoyan una falla o hablan en contra, ninguna la prueba.</translation>
    </message>
    <message>
      <source>No rule set “{name}”; expected one of {names}.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>No saturation curves are stored for “{name}”.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>no start yet</source>
      <translation>aún sin inicio</translation>
    </message>
    <message>
      <source>No stop reading yet: fill in the charge, what stands on the scale and the hose.</source>
      <translation>Aún sin lectura de parada: complete la carga, lo que está en la balanza y la manguera.</translation>
    </message>
    <message>
      <source>no threshold</source>
      <translation>sin umbral</translation>
    </message>
    <message>
      <source>No: temperatures only, system sealed.</source>
      <translation>No: solo temperaturas, sistema sellado.</translation>
    </message>
    <message>
      <source>nobody chosen yet</source>
      <translation>nadie elegido aún</translation>
    </message>
    <message>
      <source>Non-refillable containers are banned; a residue is recovered before disposal.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>non-refillable-refilled</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>none</source>
      <translation>ninguna</translation>
    </message>
    <message>
      <source>none known here</source>
      <translation>ninguna conocida aquí</translation>
    </message>
    <message>
      <source>None of the {listed} places of a {kind} was searched.</source>
      <translation>No se revisó ninguno de los {listed} lugares de {kind}.</translation>
    </message>
    <message>
      <source>none owed</source>
      <translation>ninguno debido</translation>
    </message>
    <message>
      <source>none where there should be</source>
      <translation>ninguna donde debería haber</translation>
    </message>
    <message>
      <source>none yet</source>
      <translation>ninguno aún</translation>
    </message>
    <message>
      <source>not</source>
      <translation>no</translation>
    </message>
    <message>
      <source>not a key here; expected one of {hints}.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>not a key here; expected one of {identity}.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Not above, design pressure of the {lowest}</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>not asked for this job now</source>
      <translation>no se pide ahora en este trabajo</translation>
    </message>
    <message>
      <source>Not at the drier; a capillary tube can still be blocked.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>not booked</source>
      <translation>no asentado</translation>
    </message>
    <message>
      <source>not counted yet</source>
      <translation>aún sin contar</translation>
    </message>
    <message>
      <source>Not filled after the due date; one filled before it may be used up.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>not flammable</source>
      <translation>no inflamable</translation>
    </message>
    <message>
      <source>Not for a leak</source>
      <translation>No por una fuga</translation>
    </message>
    <message>
      <source>not given</source>
      <translation>no indicado</translation>
    </message>
    <message>
      <source>not held long enough</source>
      <translation>no se mantuvo lo suficiente</translation>
    </message>
    <message>
      <source>not holding temperature</source>
      <translation>no mantiene la temperatura</translation>
    </message>
    <message>
      <source>not in the register</source>
      <translation>no está en el catálogo</translation>
    </message>
    <message>
      <source>Not judged yet</source>
      <translation>Aún sin juzgar</translation>
    </message>
    <message>
      <source>not known</source>
      <translation>desconocido</translation>
    </message>
    <message>
      <source>Not made yet: look at the marked fields.</source>
      <translation>Aún no creado: mire los campos marcados.</translation>
    </message>
    <message>
      <source>not met</source>
      <translation>no cumplido</translation>
    </message>
    <message>
      <source>Not needed</source>
      <translation>No necesario</translation>
    </message>
    <message>
      <source>not needed</source>
      <translation>no necesario</translation>
    </message>
    <message>
      <source>Not needed ({reason}); signed</source>
      <translation>No necesario ({reason}); firmado</translation>
    </message>
    <message>
      <source>not opened</source>
      <translation>no abierto</translation>
    </message>
    <message>
      <source>not over</source>
      <translation>no supera</translation>
    </message>
    <message>
      <source>not part of a figure; expected {known}.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>not proven</source>
      <translation>no probado</translation>
    </message>
    <message>
      <source>Not saved yet. Save it, or cancel once more to throw it away.</source>
      <translation>Aún sin guardar. Guárdelo, o cancele otra vez para descartarlo.</translation>
    </message>
    <message>
      <source>not shown</source>
      <translation>no mostrado</translation>
    </message>
    <message>
      <source>not suitable</source>
      <translation>no apto</translation>
    </message>
    <message>
      <source>not understood</source>
      <translation>no entendido</translation>
    </message>
    <message>
      <source>not within reckoning</source>
      <translation>no calculable</translation>
    </message>
    <message>
      <source>Not worked out anew: look at the marked fields.</source>
      <translation>No recalculado: mire los campos marcados.</translation>
    </message>
    <message>
      <source>not yet decided</source>
      <translation>aún sin decidir</translation>
    </message>
    <message>
      <source>not-above</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>not-needed</source>
      <translation>no necesario</translation>
    </message>
    <message>
      <source>Note</source>
      <translation>Nota</translation>
    </message>
    <message>
      <source>note</source>
      <translation>nota</translation>
    </message>
    <message>
      <source>notes</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>nothing</source>
      <translation>nada</translation>
    </message>
    <message>
      <source>nothing added</source>
      <translation>nada añadido</translation>
    </message>
    <message>
      <source>Nothing added yet.</source>
      <translation>Nada añadido aún.</translation>
    </message>
    <message>
      <source>nothing charged, recovered or released</source>
      <translation>nada cargado, recuperado ni liberado</translation>
    </message>
    <message>
      <source>Nothing comes from {port}; is the instrument on, and set to send by itself?</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Nothing else is, or was, in the recovery cylinder; refrigerants are not mixed.</source>
      <translation>No hay ni hubo otra cosa en el cilindro de recuperación; los refrigerantes no se mezclan.</translation>
    </message>
    <message>
      <source>Nothing has moved in or out of this cylinder yet. Receive it, or weigh it, to begin its history.</source>
      <translation>Nada ha entrado ni salido aún de este cilindro. Recíbalo o péselo para comenzar su historial.</translation>
    </message>
    <message>
      <source>Nothing here fits. Look for another word.</source>
      <translation>Nada coincide. Busque otra palabra.</translation>
    </message>
    <message>
      <source>Nothing in this register yet. {purpose} Press New to make the first.</source>
      <translation>Aún no hay nada en este catálogo. {purpose} Pulse Nuevo para crear el primero.</translation>
    </message>
    <message>
      <source>Nothing is due. Repairs, tests and inspections of leaking equipment, calibrations, requalifications and certificates stand here by their day.</source>
      <translation>Nada vence. Reparaciones, pruebas e inspecciones de equipos con fugas, calibraciones, recalificaciones y certificados aparecen aquí por su día.</translation>
    </message>
    <message>
      <source>Nothing is missing that the scale could tell; neither a leak nor tightness shows.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Nothing is recorded here yet, so there is nothing to hand over.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Nothing is typed in: {titles}. Why are they not needed?</source>
      <translation>No hay nada escrito en: {titles}. ¿Por qué no hacen falta?</translation>
    </message>
    <message>
      <source>nothing left in the system</source>
      <translation>no queda nada en el sistema</translation>
    </message>
    <message>
      <source>nothing missing within the doubt</source>
      <translation>nada falta dentro de la duda</translation>
    </message>
    <message>
      <source>Nothing moved in this period.</source>
      <translation>Nada se movió en este período.</translation>
    </message>
    <message>
      <source>Nothing new: all {known} entries were here already.</source>
      <translation>Nada nuevo: los {known} asientos ya estaban aquí.</translation>
    </message>
    <message>
      <source>Nothing of a shop can be read in {sources}, nor in a backup of it.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Nothing to tick until the refrigerant is known.</source>
      <translation>Nada que marcar mientras no se conozca el refrigerante.</translation>
    </message>
    <message>
      <source>Nothing was charged in this period, and nothing was missed.</source>
      <translation>Nada se cargó en este período y nada faltó.</translation>
    </message>
    <message>
      <source>Nothing was found, but it {check}: {reason}</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Nothing was put back: this login has no right to that. Ask the shop's owner.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Nothing was recorded in {place}</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Nothing was recorded: the signature of {name} takes a passphrase.{missing}</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Nothing was recorded: {path} {what}. A drive was taken away, or a tool that keeps folders the same replaced it. Leave what is typed on the screen, put the file back, and open the shop again.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Nothing was signed in this period. Choose another.</source>
      <translation>Nada se firmó en este período. Elija otro.</translation>
    </message>
    <message>
      <source>Nothing weighed yet</source>
      <translation>Nada pesado aún</translation>
    </message>
    <message>
      <source>nothing; it sends by itself</source>
      <translation>nada; envía por sí solo</translation>
    </message>
    <message>
      <source>now</source>
      <translation>ahora</translation>
    </message>
    <message>
      <source>Now add a file, paste a picture, or drag one here.</source>
      <translation>Ahora añada un archivo, pegue una imagen o arrástrela aquí.</translation>
    </message>
    <message>
      <source>null</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Number</source>
      <translation>Número</translation>
    </message>
    <message>
      <source>number</source>
      <translation>número</translation>
    </message>
    <message>
      <source>nut cracks, torque</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>odd</source>
      <translation>impar</translation>
    </message>
    <message>
      <source>of bench {bench}</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Of that limit the scale</source>
      <translation>De ese límite, la balanza</translation>
    </message>
    <message>
      <source>of the ledger</source>
      <translation>del libro</translation>
    </message>
    <message>
      <source>Of the reading</source>
      <translation>De la lectura</translation>
    </message>
    <message>
      <source>of the scale</source>
      <translation>de la balanza</translation>
    </message>
    <message>
      <source>of the shop</source>
      <translation>del taller</translation>
    </message>
    <message>
      <source>Of the table {name} not all can be read.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>of what was charged</source>
      <translation>de lo cargado</translation>
    </message>
    <message>
      <source>off</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>officer</source>
      <translation>encargado</translation>
    </message>
    <message>
      <source>oil marks</source>
      <translation>manchas de aceite</translation>
    </message>
    <message>
      <source>Oil separator, reservoir, floats</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>oil traces by eye</source>
      <translation>rastros de aceite a la vista</translation>
    </message>
    <message>
      <source>oil-system</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>on each circuit</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>on the roof: wind</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>On the scale</source>
      <translation>En la balanza</translation>
    </message>
    <message>
      <source>one</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>One for every appliance of a facility; while none is chosen both count.</source>
      <translation>Uno para cada equipo de una instalación; mientras no se elija, cuentan ambos.</translation>
    </message>
    <message>
      <source>One page: the shop's name, units, rule set, your name and certificate.</source>
      <translation>Una página: nombre del taller, unidades, reglamento, su nombre y certificado.</translation>
    </message>
    <message>
      <source>One refrigerant circuit: what its nameplate says and which rules see in it.</source>
      <translation>Un circuito de refrigerante: lo que dice su placa y lo que las reglas ven en él.</translation>
    </message>
    <message>
      <source>one thing or two</source>
      <translation>una cosa o dos</translation>
    </message>
    <message>
      <source>One visit or repair on one equipment.</source>
      <translation>Una visita o reparación en un equipo.</translation>
    </message>
    <message>
      <source>only at the inlet</source>
      <translation>solo en la entrada</translation>
    </message>
    <message>
      <source>Only its owner, {owner}, does that to the shop in {database}; this login is {login}.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>open</source>
      <translation>abierto</translation>
    </message>
    <message>
      <source>open jobs</source>
      <translation>trabajos abiertos</translation>
    </message>
    <message>
      <source>open machines</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>open this flag and say how it was settled</source>
      <translation>abra este aviso y diga cómo se resolvió</translation>
    </message>
    <message>
      <source>opened</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>opened for major repair</source>
      <translation>abierto para reparación mayor</translation>
    </message>
    <message>
      <source>opened for repair</source>
      <translation>abierto para reparación</translation>
    </message>
    <message>
      <source>opening</source>
      <translation>abriendo</translation>
    </message>
    <message>
      <source>Opening the port.</source>
      <translation>Abriendo el puerto.</translation>
    </message>
    <message>
      <source>Opening the sample shop. The first time it is made, which takes a few seconds …</source>
      <translation>Se abre el taller de muestra. La primera vez se crea, lo que tarda unos segundos …</translation>
    </message>
    <message>
      <source>Opening the shop's records …</source>
      <translation>Abriendo los registros del taller …</translation>
    </message>
    <message>
      <source>Opening {port}.</source>
      <translation>Abriendo {port}.</translation>
    </message>
    <message>
      <source>openpty</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Or bring every entry that can be read, here or in a backup, into a new file. This file is only read.</source>
      <translation>O llevar cada asiento legible, de aquí o de una copia, a un archivo nuevo. Este archivo solo se lee.</translation>
    </message>
    <message>
      <source>or hose volume</source>
      <translation>o volumen de la manguera</translation>
    </message>
    <message>
      <source>Origin</source>
      <translation>Origen</translation>
    </message>
    <message>
      <source>origin</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>other</source>
      <translation>otro</translation>
    </message>
    <message>
      <source>other refrigerant</source>
      <translation>otro refrigerante</translation>
    </message>
    <message>
      <source>ounce</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>ounce|ounces|oz.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>out along the suction line</source>
      <translation>hacia fuera por la línea de succión</translation>
    </message>
    <message>
      <source>out of service</source>
      <translation>fuera de servicio</translation>
    </message>
    <message>
      <source>Outdoor unit's stop valves</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>outdoor-valves</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>outdoors</source>
      <translation>al aire libre</translation>
    </message>
    <message>
      <source>Outdoors, or air is moving through before work begins and until it ends; ammonia rises, heavier gases sink.</source>
      <translation>Al aire libre, o el aire circula desde antes de empezar hasta el final; el amoníaco sube, los gases más pesados bajan.</translation>
    </message>
    <message>
      <source>Outdoors, or air is moving through before work begins and until it ends; vapour sinks and gathers in pits, drains and under cabinets.</source>
      <translation>Al aire libre, o el aire circula desde antes de empezar hasta el final; el vapor baja y se junta en fosas, desagües y bajo los muebles.</translation>
    </message>
    <message>
      <source>outside</source>
      <translation>fuera</translation>
    </message>
    <message>
      <source>over</source>
      <translation>por encima</translation>
    </message>
    <message>
      <source>over ambient</source>
      <translation>sobre ambiente</translation>
    </message>
    <message>
      <source>over limit, {share:.0f} %</source>
      <translation>sobre el límite, {share:.0f} %</translation>
    </message>
    <message>
      <source>over nameplate</source>
      <translation>sobre la placa</translation>
    </message>
    <message>
      <source>Over nameplate by {size}: {charged} in, nameplate {nameplate}, tolerance {tolerance}. Recover and weigh in again; do not leave overcharged.</source>
      <translation>Sobre la placa por {size}: {charged} dentro, placa {nameplate}, tolerancia {tolerance}. Recupere y cargue de nuevo por peso; no lo deje sobrecargado.</translation>
    </message>
    <message>
      <source>Over nameplate by {text} {doubt}</source>
      <translation>Sobre la placa por {text} {doubt}</translation>
    </message>
    <message>
      <source>over, seen to</source>
      <translation>superado, atendido</translation>
    </message>
    <message>
      <source>over-charge-limit</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>over-nameplate</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>overcharge</source>
      <translation>sobrecarga</translation>
    </message>
    <message>
      <source>overdrawn</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>overdue</source>
      <translation>vencido</translation>
    </message>
    <message>
      <source>overdue by {span}</source>
      <translation>vencido hace {span}</translation>
    </message>
    <message>
      <source>override</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>owed</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>own dates</source>
      <translation>fechas propias</translation>
    </message>
    <message>
      <source>own-entries</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Owner</source>
      <translation>Propietario</translation>
    </message>
    <message>
      <source>owner</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Owner or operator</source>
      <translation>Propietario u operador</translation>
    </message>
    <message>
      <source>oz / year</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>oz | °F</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>oz/y|oz/year</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>ozone-depleting</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>P&amp;erson</source>
      <translation>Per&amp;sona</translation>
    </message>
    <message>
      <source>P&amp;rint…</source>
      <translation>I&amp;mprimir…</translation>
    </message>
    <message>
      <source>Pa / minute</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Pa&amp;per</source>
      <translation>Pa&amp;pel</translation>
    </message>
    <message>
      <source>Pages of the guide</source>
      <translation>Páginas de la guía</translation>
    </message>
    <message>
      <source>Paper</source>
      <translation>Papel</translation>
    </message>
    <message>
      <source>paper</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>papers</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>paplay</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Parity</source>
      <translation>Paridad</translation>
    </message>
    <message>
      <source>parity</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Part</source>
      <translation>Pieza</translation>
    </message>
    <message>
      <source>part</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>part of a charge</source>
      <translation>parte de una carga</translation>
    </message>
    <message>
      <source>Parts</source>
      <translation>Piezas</translation>
    </message>
    <message>
      <source>parts</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Parts came on</source>
      <translation>Las piezas llegaron el</translation>
    </message>
    <message>
      <source>parts not available in time</source>
      <translation>piezas no disponibles a tiempo</translation>
    </message>
    <message>
      <source>Parts to be fitted are the maker's own or certified for this refrigerant; sealed electrical parts keep their grade.</source>
      <translation>Las piezas a montar son del fabricante o certificadas para este refrigerante; las partes eléctricas selladas conservan su grado.</translation>
    </message>
    <message>
      <source>pascal / minute</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>pascal|Pa(a)</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>passed</source>
      <translation>aprobada</translation>
    </message>
    <message>
      <source>passphrase</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Passphrase set; the signature of {currenttext} is unlocked.</source>
      <translation>Contraseña fijada; la firma de {currenttext} está desbloqueada.</translation>
    </message>
    <message>
      <source>passphrase-set</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>passphrases</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>past</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>pasted</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>path</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>PDF (*.pdf)</source>
      <translation>PDF (*.pdf)</translation>
    </message>
    <message>
      <source>percent</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>percentage</source>
      <translation>porcentaje</translation>
    </message>
    <message>
      <source>percent|per cent|pct</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Period</source>
      <translation>Período</translation>
    </message>
    <message>
      <source>Period and filter&amp;s</source>
      <translation>Período y filt&amp;ros</translation>
    </message>
    <message>
      <source>Person</source>
      <translation>Persona</translation>
    </message>
    <message>
      <source>person</source>
      <translation>persona</translation>
    </message>
    <message>
      <source>Photos</source>
      <translation>Fotos</translation>
    </message>
    <message>
      <source>Photos ({files})</source>
      <translation>Fotos ({files})</translation>
    </message>
    <message>
      <source>Photos of this job</source>
      <translation>Fotos de este trabajo</translation>
    </message>
    <message>
      <source>Photos…</source>
      <translation>Fotos…</translation>
    </message>
    <message>
      <source>picture</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Place</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>place</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Place | str</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>place, refrigerant</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>places</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Places searched</source>
      <translation>Lugares revisados</translation>
    </message>
    <message>
      <source>plan carried out</source>
      <translation>plan realizado</translation>
    </message>
    <message>
      <source>plan on file</source>
      <translation>plan archivado</translation>
    </message>
    <message>
      <source>Plans and reports</source>
      <translation>Planes e informes</translation>
    </message>
    <message>
      <source>point</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>poor airflow or iced coil</source>
      <translation>mal flujo de aire o serpentín helado</translation>
    </message>
    <message>
      <source>Poor airflow would raise the difference.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Port</source>
      <translation>Puerto</translation>
    </message>
    <message>
      <source>Port…</source>
      <translation>Puerto…</translation>
    </message>
    <message>
      <source>position</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>posix</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>postgres</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>postgresql</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>pound</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>pound / foot ** 3</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Power is off and locked, capacitors are discharged, and no live unsealed part is touched.</source>
      <translation>La energía está cortada y bloqueada, los capacitores descargados, y no se toca ninguna parte viva sin sellar.</translation>
    </message>
    <message>
      <source>Prac&amp;tise</source>
      <translation>Prac&amp;ticar</translation>
    </message>
    <message>
      <source>Practical limit</source>
      <translation>Límite práctico</translation>
    </message>
    <message>
      <source>practical-limit</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>practice</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Practice instruments need pseudo-terminals, which this system does not have; expected Linux or macOS.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Press “{begin}” at the start, then read the gauge.</source>
      <translation>Pulse “{begin}” al comenzar y luego lea el manómetro.</translation>
    </message>
    <message>
      <source>Pressure</source>
      <translation>Presión</translation>
    </message>
    <message>
      <source>pressure</source>
      <translation>presión</translation>
    </message>
    <message>
      <source>Pressure [{pressure}]</source>
      <translation>Presión [{pressure}]</translation>
    </message>
    <message>
      <source>Pressure at end</source>
      <translation>Presión final</translation>
    </message>
    <message>
      <source>Pressure at start</source>
      <translation>Presión inicial</translation>
    </message>
    <message>
      <source>Pressure class at 104 °F</source>
      <translation>Clase de presión a 104 °F</translation>
    </message>
    <message>
      <source>pressure gauge</source>
      <translation>manómetro</translation>
    </message>
    <message>
      <source>Pressure in</source>
      <translation>Presión en</translation>
    </message>
    <message>
      <source>Pressure in the hose</source>
      <translation>Presión en la manguera</translation>
    </message>
    <message>
      <source>Pressure test</source>
      <translation>Prueba de presión</translation>
    </message>
    <message>
      <source>pressure test</source>
      <translation>prueba de presión</translation>
    </message>
    <message>
      <source>Pressure test with nitrogen passed before refrigerant goes in.</source>
      <translation>Prueba de presión con nitrógeno aprobada antes de poner refrigerante.</translation>
    </message>
    <message>
      <source>Pressure test: {verdict}; {drop} beyond what temperature explains, ±{doubt}.</source>
      <translation>Prueba de presión: {verdict}; {drop} más allá de lo que explica la temperatura, ±{doubt}.</translation>
    </message>
    <message>
      <source>Pressure {moved} by {size} beyond what temperature explains. {advice} before going on.</source>
      <translation>La presión {moved} {size} más de lo que explica la temperatura. {advice} antes de seguir.</translation>
    </message>
    <message>
      <source>pressure, {unit}</source>
      <translation>presión, {unit}</translation>
    </message>
    <message>
      <source>pressure-controls</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Pressure-temperature chart</source>
      <translation>Gráfico de presión y temperatura</translation>
    </message>
    <message>
      <source>pressure-test-missing</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Presumed lost</source>
      <translation>Presuntamente perdido</translation>
    </message>
    <message>
      <source>presumed lost</source>
      <translation>presuntamente perdido</translation>
    </message>
    <message>
      <source>Preview</source>
      <translation>Vista previa</translation>
    </message>
    <message>
      <source>Previous step</source>
      <translation>Paso anterior</translation>
    </message>
    <message>
      <source>Print</source>
      <translation>Imprimir</translation>
    </message>
    <message>
      <source>Print &amp;now</source>
      <translation>I&amp;mprimir ahora</translation>
    </message>
    <message>
      <source>printed filling ratio</source>
      <translation>relación de llenado impresa</translation>
    </message>
    <message>
      <source>Print…</source>
      <translation>Imprimir…</translation>
    </message>
    <message>
      <source>Process stub pinched and sealed; no service fitting left on that fits non-flammable gauges.</source>
      <translation>Tubo de proceso pellizcado y sellado; no queda conexión de servicio para manómetros de no inflamables.</translation>
    </message>
    <message>
      <source>Process stub resealed, service fittings off</source>
      <translation>Tubo de proceso resellado, conexiones de servicio retiradas</translation>
    </message>
    <message>
      <source>Process stubs and their seals</source>
      <translation>Tubos de proceso y sus sellos</translation>
    </message>
    <message>
      <source>process valve core</source>
      <translation>núcleo de la válvula de proceso</translation>
    </message>
    <message>
      <source>process-stubs</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Progress</source>
      <translation>Progreso</translation>
    </message>
    <message>
      <source>prompt</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>properties</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>protection</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>psi</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>psi(a)|psiabs|psi(abs)</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>psi(g)|psigauge</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>psia</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>psig</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>public</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Pulled down to</source>
      <translation>Vacío hasta</translation>
    </message>
    <message>
      <source>Pulled down to {pulled}, short of {wanted}. Pull on.</source>
      <translation>Vacío hasta {pulled}, faltando para {wanted}. Siga haciendo vacío.</translation>
    </message>
    <message>
      <source>Pulled down, isolated, and watched: dry and tight, or not.</source>
      <translation>Vacío hecho, aislado y observado: seco y estanco, o no.</translation>
    </message>
    <message>
      <source>pulled-to</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>pump</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Pump ran</source>
      <translation>La bomba funcionó</translation>
    </message>
    <message>
      <source>pure</source>
      <translation>puro</translation>
    </message>
    <message>
      <source>Purge: vacuum broken with nitrogen, filled to working pressure, let out, pulled down; repeated until no refrigerant is left.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Put back within a year it is no leak, as far as no more goes in.</source>
      <translation>Devuelto dentro de un año no es fuga, mientras no entre más.</translation>
    </message>
    <message>
      <source>Put off to {extended_to}: {how}.</source>
      <translation>Aplazado hasta {extended_to}: {how}.</translation>
    </message>
    <message>
      <source>queue.SimpleQueue[str]</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>R&amp;eference</source>
      <translation>Cons&amp;ulta</translation>
    </message>
    <message>
      <source>rack</source>
      <translation>rack</translation>
    </message>
    <message>
      <source>rack or chiller</source>
      <translation>rack o enfriador</translation>
    </message>
    <message>
      <source>radiological contamination</source>
      <translation>contaminación radiológica</translation>
    </message>
    <message>
      <source>Raise the pressure with dry nitrogen, within the design pressure.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>ran</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Ran since the repair</source>
      <translation>Funcionó desde la reparación</translation>
    </message>
    <message>
      <source>Ran&amp;ge</source>
      <translation>&amp;Rango</translation>
    </message>
    <message>
      <source>Range, high</source>
      <translation>Rango, máximo</translation>
    </message>
    <message>
      <source>Range, low</source>
      <translation>Rango, mínimo</translation>
    </message>
    <message>
      <source>rate</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Rated current</source>
      <translation>Corriente nominal</translation>
    </message>
    <message>
      <source>rcl</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Re&amp;frigerant</source>
      <translation>Re&amp;frigerante</translation>
    </message>
    <message>
      <source>Re&amp;gisters</source>
      <translation>Catálo&amp;gos</translation>
    </message>
    <message>
      <source>Re&amp;turn</source>
      <translation>De&amp;volver</translation>
    </message>
    <message>
      <source>Read again</source>
      <translation>Lea de nuevo</translation>
    </message>
    <message>
      <source>Read from</source>
      <translation>Leído de</translation>
    </message>
    <message>
      <source>Read from its port…</source>
      <translation>Leer de su puerto…</translation>
    </message>
    <message>
      <source>Read the gauge now: {clock}</source>
      <translation>Lea el manómetro ahora: {clock}</translation>
    </message>
    <message>
      <source>Read the pressure first.</source>
      <translation>Lea primero la presión.</translation>
    </message>
    <message>
      <source>Read, not typed</source>
      <translation>Leído, no escrito</translation>
    </message>
    <message>
      <source>Reader</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Reading</source>
      <translation>Lectura</translation>
    </message>
    <message>
      <source>reading</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Reading every</source>
      <translation>Lectura cada</translation>
    </message>
    <message>
      <source>reading wanted</source>
      <translation>falta la lectura</translation>
    </message>
    <message>
      <source>Reading what can be read …</source>
      <translation>Leyendo lo legible …</translation>
    </message>
    <message>
      <source>readings</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Readings before anything is changed.</source>
      <translation>Lecturas antes de cambiar nada.</translation>
    </message>
    <message>
      <source>Readings can not settle the charge of a critically charged sealed system; recovering and weighing in does.</source>
      <translation>Las lecturas no pueden aclarar la carga de un sistema sellado de carga crítica; recuperar y cargar por peso sí.</translation>
    </message>
    <message>
      <source>Readings entered</source>
      <translation>Lecturas introducidas</translation>
    </message>
    <message>
      <source>Readings from a file</source>
      <translation>Lecturas de un archivo</translation>
    </message>
    <message>
      <source>Readings meanwhile</source>
      <translation>Lecturas intermedias</translation>
    </message>
    <message>
      <source>Readings with the work done.</source>
      <translation>Lecturas con el trabajo hecho.</translation>
    </message>
    <message>
      <source>reason</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Reason of the difference</source>
      <translation>Motivo de la diferencia</translation>
    </message>
    <message>
      <source>Reason of the visit</source>
      <translation>Motivo de la visita</translation>
    </message>
    <message>
      <source>Reason to fill above the limit</source>
      <translation>Motivo para llenar sobre el límite</translation>
    </message>
    <message>
      <source>Recei&amp;ve</source>
      <translation>&amp;Recibir</translation>
    </message>
    <message>
      <source>Receive</source>
      <translation>Recibir</translation>
    </message>
    <message>
      <source>receive</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Received</source>
      <translation>Recibido</translation>
    </message>
    <message>
      <source>received</source>
      <translation>recibido</translation>
    </message>
    <message>
      <source>receiver</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Receiver, name and address</source>
      <translation>Receptor, nombre y dirección</translation>
    </message>
    <message>
      <source>Receiver, sight glass, level controls</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>reclaimed</source>
      <translation>regenerado</translation>
    </message>
    <message>
      <source>Reclaimed or recycled by</source>
      <translation>Regenerado o reciclado por</translation>
    </message>
    <message>
      <source>reclaimer</source>
      <translation>regenerador</translation>
    </message>
    <message>
      <source>Record</source>
      <translation>Registrar</translation>
    </message>
    <message>
      <source>Record reversal</source>
      <translation>Registrar anulación</translation>
    </message>
    <message>
      <source>Record: {form}</source>
      <translation>Registrar: {form}</translation>
    </message>
    <message>
      <source>Recorded</source>
      <translation>Registrado</translation>
    </message>
    <message>
      <source>recorded</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Recorded: what was signed when the server went away stands as entry {entry_number} of bench {bench}. Nothing was recorded twice; look at it before you go on.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Records</source>
      <translation>Registros</translation>
    </message>
    <message>
      <source>records</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>records may be archived after this day</source>
      <translation>los registros pueden archivarse después de este día</translation>
    </message>
    <message>
      <source>Recover; release only where the law of the place allows it.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Recovered</source>
      <translation>Recuperado</translation>
    </message>
    <message>
      <source>recovered</source>
      <translation>recuperado</translation>
    </message>
    <message>
      <source>Recovered {mass}.</source>
      <translation>Recuperado {mass}.</translation>
    </message>
    <message>
      <source>Recovery</source>
      <translation>Recuperación</translation>
    </message>
    <message>
      <source>recovery</source>
      <translation>recuperación</translation>
    </message>
    <message>
      <source>Recovery and disposal</source>
      <translation>Recuperación y disposición</translation>
    </message>
    <message>
      <source>Recovery cylinder is labelled for this refrigerant, evacuated, cool, with working relief and shut-off valves, within its date, and never above its fill limit.</source>
      <translation>El cilindro de recuperación está rotulado para este refrigerante, evacuado, frío, con válvulas de alivio y cierre que funcionan, dentro de su fecha y nunca sobre su límite.</translation>
    </message>
    <message>
      <source>Recovery machine</source>
      <translation>Máquina de recuperación</translation>
    </message>
    <message>
      <source>recovery machine</source>
      <translation>máquina de recuperación</translation>
    </message>
    <message>
      <source>Recovery machine is made for flammable refrigerant, in good order, and stands in moving air.</source>
      <translation>La máquina de recuperación es para refrigerante inflamable, está en buen estado y en aire en movimiento.</translation>
    </message>
    <message>
      <source>recovery-level</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>recursive_triggers=ON</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>recycled</source>
      <translation>reciclado</translation>
    </message>
    <message>
      <source>Reference</source>
      <translation>Consulta</translation>
    </message>
    <message>
      <source>reference</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Reference: {refrigerant}</source>
      <translation>Referencia: {refrigerant}</translation>
    </message>
    <message>
      <source>Refillable</source>
      <translation>Recargable</translation>
    </message>
    <message>
      <source>refillable</source>
      <translation>recargable</translation>
    </message>
    <message>
      <source>Refrigerant</source>
      <translation>Refrigerante</translation>
    </message>
    <message>
      <source>refrigerant</source>
      <translation>refrigerante</translation>
    </message>
    <message>
      <source>Refrigerant found</source>
      <translation>Refrigerante hallado</translation>
    </message>
    <message>
      <source>Refrigerant is</source>
      <translation>El refrigerante es</translation>
    </message>
    <message>
      <source>refrigerant unknown</source>
      <translation>refrigerante desconocido</translation>
    </message>
    <message>
      <source>refrigerated transport</source>
      <translation>transporte refrigerado</translation>
    </message>
    <message>
      <source>refrigeration</source>
      <translation>refrigeración</translation>
    </message>
    <message>
      <source>refusal</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Register</source>
      <translation>Catálogo</translation>
    </message>
    <message>
      <source>register</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>register changed</source>
      <translation>catálogo cambiado</translation>
    </message>
    <message>
      <source>register people and set their passphrases anew</source>
      <translation>registrar personas y fijar de nuevo sus contraseñas</translation>
    </message>
    <message>
      <source>register row</source>
      <translation>fila del catálogo</translation>
    </message>
    <message>
      <source>register, id</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>register.{register}.{row_id}: this shop has other words for {row_id}; give it another id, or make both the same.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>registered</source>
      <translation>registrado</translation>
    </message>
    <message>
      <source>Registers</source>
      <translation>Catálogos</translation>
    </message>
    <message>
      <source>regulated</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>regulations</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Regulator and relief fitted</source>
      <translation>Regulador y alivio instalados</translation>
    </message>
    <message>
      <source>release-not-exempt</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Released</source>
      <translation>Liberado</translation>
    </message>
    <message>
      <source>released</source>
      <translation>liberado</translation>
    </message>
    <message>
      <source>Released or lost</source>
      <translation>Liberado o perdido</translation>
    </message>
    <message>
      <source>Released where allowed</source>
      <translation>Liberado donde se permite</translation>
    </message>
    <message>
      <source>released where the law allows</source>
      <translation>liberado donde la ley lo permite</translation>
    </message>
    <message>
      <source>relief</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Relief valves and their vents</source>
      <translation>Válvulas de alivio y sus venteos</translation>
    </message>
    <message>
      <source>Remarks</source>
      <translation>Observaciones</translation>
    </message>
    <message>
      <source>remarks</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Remote condenser and its valves</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>remote-condenser</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Remove</source>
      <translation>Quitar</translation>
    </message>
    <message>
      <source>Remove line {number} of {group}</source>
      <translation>Quitar la línea {number} de {group}</translation>
    </message>
    <message>
      <source>renewal of the certificate</source>
      <translation>renovación del certificado</translation>
    </message>
    <message>
      <source>Reopen</source>
      <translation>Reabrir</translation>
    </message>
    <message>
      <source>Repair</source>
      <translation>Reparación</translation>
    </message>
    <message>
      <source>repair</source>
      <translation>reparación</translation>
    </message>
    <message>
      <source>Repair needs an industrial process shutdown</source>
      <translation>La reparación exige parar un proceso industrial</translation>
    </message>
    <message>
      <source>Repaired leak tested</source>
      <translation>Fuga reparada probada</translation>
    </message>
    <message>
      <source>repeatability</source>
      <translation>repetibilidad</translation>
    </message>
    <message>
      <source>Repeatability of a scale</source>
      <translation>Repetibilidad de una balanza</translation>
    </message>
    <message>
      <source>replace</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>replaced</source>
      <translation>reemplazado</translation>
    </message>
    <message>
      <source>replaced by entry {replaced_by_number}</source>
      <translation>sustituido por el asiento {replaced_by_number}</translation>
    </message>
    <message>
      <source>replaces</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>replaces entry {replaces_number}</source>
      <translation>sustituye al asiento {replaces_number}</translation>
    </message>
    <message>
      <source>report sent</source>
      <translation>informe enviado</translation>
    </message>
    <message>
      <source>reports</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Requalification</source>
      <translation>Recalificación</translation>
    </message>
    <message>
      <source>requalification</source>
      <translation>recalificación</translation>
    </message>
    <message>
      <source>Requalification due</source>
      <translation>Vence recalificación</translation>
    </message>
    <message>
      <source>requalification {due_words}</source>
      <translation>recalificación {due_words}</translation>
    </message>
    <message>
      <source>requalification-due</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>requalified</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>required</source>
      <translation>exigido</translation>
    </message>
    <message>
      <source>Required recovery</source>
      <translation>Recuperación exigida</translation>
    </message>
    <message>
      <source>rescue</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Rescue into a new file</source>
      <translation>Rescatar en un archivo nuevo</translation>
    </message>
    <message>
      <source>rescued</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Reseal</source>
      <translation>Resellado</translation>
    </message>
    <message>
      <source>resealed</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>residential</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Residential and light commercial air conditioning and heat pumps.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Residential or light commercial AC</source>
      <translation>Climatización residencial o comercial ligera</translation>
    </message>
    <message>
      <source>resolution</source>
      <translation>resolución</translation>
    </message>
    <message>
      <source>Resolution and accuracy</source>
      <translation>Resolución y exactitud</translation>
    </message>
    <message>
      <source>Resolution of a gauge</source>
      <translation>Resolución de un manómetro</translation>
    </message>
    <message>
      <source>Resolution of a scale</source>
      <translation>Resolución de una balanza</translation>
    </message>
    <message>
      <source>restriction</source>
      <translation>restricción</translation>
    </message>
    <message>
      <source>rests</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Result</source>
      <translation>Resultado</translation>
    </message>
    <message>
      <source>result</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>results</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>retired</source>
      <translation>retirado</translation>
    </message>
    <message>
      <source>Retired on</source>
      <translation>Retirado el</translation>
    </message>
    <message>
      <source>retirement</source>
      <translation>retiro</translation>
    </message>
    <message>
      <source>retrofit</source>
      <translation>reconversión</translation>
    </message>
    <message>
      <source>retrofit or retirement plan</source>
      <translation>plan de reconversión o retiro</translation>
    </message>
    <message>
      <source>retrofit or retirement plan, if not repaired</source>
      <translation>plan de reconversión o retiro, si no se repara</translation>
    </message>
    <message>
      <source>retrofitted or retired instead</source>
      <translation>reconvertido o retirado en su lugar</translation>
    </message>
    <message>
      <source>Return</source>
      <translation>Intro</translation>
    </message>
    <message>
      <source>return</source>
      <translation>Devolución</translation>
    </message>
    <message>
      <source>Returned</source>
      <translation>Devuelto</translation>
    </message>
    <message>
      <source>returned</source>
      <translation>devuelto</translation>
    </message>
    <message>
      <source>reversal</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Reverse</source>
      <translation>Anular</translation>
    </message>
    <message>
      <source>reversed-twice</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>reverses</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Reversing valve</source>
      <translation>Válvula reversible</translation>
    </message>
    <message>
      <source>reversing-valve</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>rights on </source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>rise</source>
      <translation>subida</translation>
    </message>
    <message>
      <source>ro&amp;immutable=1</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Role</source>
      <translation>Función</translation>
    </message>
    <message>
      <source>role</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Rolling</source>
      <translation>Móvil</translation>
    </message>
    <message>
      <source>rolling average</source>
      <translation>promedio móvil</translation>
    </message>
    <message>
      <source>rolling average, the higher</source>
      <translation>promedio móvil, el mayor</translation>
    </message>
    <message>
      <source>room not known</source>
      <translation>espacio desconocido</translation>
    </message>
    <message>
      <source>root of the sum of squares</source>
      <translation>raíz de la suma de cuadrados</translation>
    </message>
    <message>
      <source>rose</source>
      <translation>subió</translation>
    </message>
    <message>
      <source>rose more than its temperature explains</source>
      <translation>subió más de lo que explica su temperatura</translation>
    </message>
    <message>
      <source>row</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Rows</source>
      <translation>Filas</translation>
    </message>
    <message>
      <source>rubbing on brackets</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Rule</source>
      <translation>Regla</translation>
    </message>
    <message>
      <source>Rule file of the shop</source>
      <translation>Archivo de reglas del taller</translation>
    </message>
    <message>
      <source>Rule files (*.toml);;All files (*)</source>
      <translation>Archivos de reglas (*.toml);;Todos los archivos (*)</translation>
    </message>
    <message>
      <source>Rule set</source>
      <translation>Reglamento</translation>
    </message>
    <message>
      <source>rule-file</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Rules</source>
      <translation>Reglas</translation>
    </message>
    <message>
      <source>rules</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>running</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Running as normal since</source>
      <translation>Funciona con normalidad desde</translation>
    </message>
    <message>
      <source>runs</source>
      <translation>funciona</translation>
    </message>
    <message>
      <source>rwc</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>saddles and supports</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Safety</source>
      <translation>Seguridad</translation>
    </message>
    <message>
      <source>safety</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Safety class</source>
      <translation>Clase de seguridad</translation>
    </message>
    <message>
      <source>Safety list</source>
      <translation>Lista de seguridad</translation>
    </message>
    <message>
      <source>safety-list-incomplete</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>said</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>same</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>same-as</source>
      <translation>la misma cosa</translation>
    </message>
    <message>
      <source>sans-serif</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>saturated vapour</source>
      <translation>vapor saturado</translation>
    </message>
    <message>
      <source>Saturation of a refrigerant in any range and units, and what is known of it.</source>
      <translation>Saturación de un refrigerante en cualquier rango y unidad, y lo que se sabe de él.</translation>
    </message>
    <message>
      <source>Saturation table</source>
      <translation>Tabla de saturación</translation>
    </message>
    <message>
      <source>Save as PDF</source>
      <translation>Guardar como PDF</translation>
    </message>
    <message>
      <source>Saved: {path}.</source>
      <translation>Guardado: {path}.</translation>
    </message>
    <message>
      <source>Sc&amp;ale</source>
      <translation>&amp;Balanza</translation>
    </message>
    <message>
      <source>Scale</source>
      <translation>Balanza</translation>
    </message>
    <message>
      <source>scale</source>
      <translation>balanza</translation>
    </message>
    <message>
      <source>scale reading</source>
      <translation>lectura de balanza</translation>
    </message>
    <message>
      <source>scale too coarse to tell</source>
      <translation>balanza demasiado gruesa para decidir</translation>
    </message>
    <message>
      <source>Scale too coarse to tell: off by {text} {doubt}</source>
      <translation>Balanza demasiado gruesa para decidir: desvío {text} {doubt}</translation>
    </message>
    <message>
      <source>Scale too coarse to tell: {difference} (±{doubt}) against a tolerance of {tolerance}. Use a finer scale.{finer}</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>scale-too-coarse</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Scales, gauges, detectors and machines: what they can resolve, when they were last checked.</source>
      <translation>Balanzas, manómetros, detectores y máquinas: qué resuelven y cuándo se revisaron por última vez.</translation>
    </message>
    <message>
      <source>scfp</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>schema</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>scope</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Search above each joint first.</source>
      <translation>Busque primero sobre cada unión.</translation>
    </message>
    <message>
      <source>Search low first, below each joint.</source>
      <translation>Busque primero abajo, bajo cada unión.</translation>
    </message>
    <message>
      <source>Search without a find</source>
      <translation>Búsqueda sin hallazgo</translation>
    </message>
    <message>
      <source>search-not-proven</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Searched from below for gas heavier than air, with a method that has no flame and no spark.</source>
      <translation>Buscado desde abajo para gas más pesado que el aire, con un método sin llama ni chispa.</translation>
    </message>
    <message>
      <source>Searched from the lowest point up</source>
      <translation>Se buscó del punto más bajo hacia arriba</translation>
    </message>
    <message>
      <source>searches</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>seasonal</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>seasonal variance</source>
      <translation>variación estacional</translation>
    </message>
    <message>
      <source>seconds</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>sec|second|seconds|secs</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Seen by</source>
      <translation>Visto con</translation>
    </message>
    <message>
      <source>Sees from</source>
      <translation>Ve desde</translation>
    </message>
    <message>
      <source>self-contained cabinet</source>
      <translation>equipo autónomo</translation>
    </message>
    <message>
      <source>self-contained open</source>
      <translation>autónomo abierto</translation>
    </message>
    <message>
      <source>self-contained with doors or drawers</source>
      <translation>autónomo con puertas o cajones</translation>
    </message>
    <message>
      <source>sensitivity</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Sensitivity of a detector</source>
      <translation>Sensibilidad de un detector</translation>
    </message>
    <message>
      <source>separator</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Sequence[Photo]</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>serial</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Serial line</source>
      <translation>Línea serie</translation>
    </message>
    <message>
      <source>serial line</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Serial number</source>
      <translation>Número de serie</translation>
    </message>
    <message>
      <source>serial number</source>
      <translation>número de serie</translation>
    </message>
    <message>
      <source>service records</source>
      <translation>registros de servicio</translation>
    </message>
    <message>
      <source>service sheet, support line</source>
      <translation>hoja de servicio, línea de ayuda</translation>
    </message>
    <message>
      <source>Service valves, cores and caps</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>service-ban</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>service-valves</source>
      <translation>Válvulas de servicio, núcleos y tapas</translation>
    </message>
    <message>
      <source>Servicing with this refrigerant of GWP {potential:g} is banned from {gwp_from} on since {since}. Use what the rules still allow; the text of the law decides.</source>
      <translation>El servicio con este refrigerante de PCA {potential:g} está prohibido desde {gwp_from} a partir de {since}. Use lo que las reglas aún permiten; decide el texto de la ley.</translation>
    </message>
    <message>
      <source>set</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Set aside and close</source>
      <translation>Apartar y cerrar</translation>
    </message>
    <message>
      <source>Set point</source>
      <translation>Consigna</translation>
    </message>
    <message>
      <source>Setting</source>
      <translation>Ajuste</translation>
    </message>
    <message>
      <source>settings</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Settings changed</source>
      <translation>Ajustes cambiados</translation>
    </message>
    <message>
      <source>Settle a conflict</source>
      <translation>Resolver un conflicto</translation>
    </message>
    <message>
      <source>settled</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Shaft seals and gaskets of compressors</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>shaft-seals</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>share</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Share recovered</source>
      <translation>Parte recuperada</translation>
    </message>
    <message>
      <source>share-of-lfl</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Shield each joint and stop fans.</source>
      <translation>Proteja cada unión y pare los ventiladores.</translation>
    </message>
    <message>
      <source>shift</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Shift+F8 cautions</source>
      <translation>Mayús+F8 precauciones</translation>
    </message>
    <message>
      <source>Shift+F8: all cautions of this step with their sources</source>
      <translation>Mayús+F8: todas las precauciones de este paso con sus fuentes</translation>
    </message>
    <message>
      <source>Shop</source>
      <translation>Taller</translation>
    </message>
    <message>
      <source>shop</source>
      <translation>taller</translation>
    </message>
    <message>
      <source>Shop files (*)</source>
      <translation>Archivos de taller (*)</translation>
    </message>
    <message>
      <source>Shop…</source>
      <translation>Taller…</translation>
    </message>
    <message>
      <source>Short of the nameplate</source>
      <translation>Falta respecto a la placa</translation>
    </message>
    <message>
      <source>Show &amp;large</source>
      <translation>Ver &amp;grande</translation>
    </message>
    <message>
      <source>shutdown</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>shutting down</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Side by side</source>
      <translation>Lado a lado</translation>
    </message>
    <message>
      <source>sight glass, winter and summer</source>
      <translation>visor, invierno y verano</translation>
    </message>
    <message>
      <source>Sign</source>
      <translation>Firmar</translation>
    </message>
    <message>
      <source>sign steps of jobs and stock work</source>
      <translation>firmar pasos de trabajos y tareas de existencias</translation>
    </message>
    <message>
      <source>Sign the stock-take</source>
      <translation>Firmar el inventario</translation>
    </message>
    <message>
      <source>Sign with this bench's ke&amp;y, so that a change shows elsewhere</source>
      <translation>Firmar con la cla&amp;ve de este banco, para que un cambio se note en otro lugar</translation>
    </message>
    <message>
      <source>Signed</source>
      <translation>Firmado</translation>
    </message>
    <message>
      <source>signed</source>
      <translation>firmado</translation>
    </message>
    <message>
      <source>Signed by, for the owner or operator</source>
      <translation>Firmado por, en nombre del propietario u operador</translation>
    </message>
    <message>
      <source>signed-twice</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Signing records {title} of {number} by {who}.</source>
      <translation>Al firmar se registra {title} de {number} por {who}.</translation>
    </message>
    <message>
      <source>sij,sjk,sik-&gt;si</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>silent</source>
      <translation>en silencio</translation>
    </message>
    <message>
      <source>sister</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Sister unit</source>
      <translation>Equipo gemelo</translation>
    </message>
    <message>
      <source>Site</source>
      <translation>Sitio</translation>
    </message>
    <message>
      <source>site</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Sites, equipment, people, instruments, cylinders, the shop</source>
      <translation>Sitios, equipos, personas, instrumentos, cilindros, el taller</translation>
    </message>
    <message>
      <source>Size</source>
      <translation>Tamaño</translation>
    </message>
    <message>
      <source>slow or stopped</source>
      <translation>lento o parado</translation>
    </message>
    <message>
      <source>Slow outgassing would look the same as a leak so far.</source>
      <translation>Una desgasificación lenta se vería hasta ahora igual que una fuga.</translation>
    </message>
    <message>
      <source>Smallest leak it could see</source>
      <translation>La menor fuga que podría ver</translation>
    </message>
    <message>
      <source>smallest-leak</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>smallest-loss</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>snk,skn-&gt;sn</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>snl</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>So are {untold} more up to entry {gap} of bench {name}.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>somebody else was chosen while a passphrase was asked for</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>somebody of the shop</source>
      <translation>alguien del taller</translation>
    </message>
    <message>
      <source>Something stands behind the end of the file.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Something went wrong that is a fault of this program, not yours. What was signed and what is typed is kept. The fault is written in {path}.</source>
      <translation>Algo salió mal por culpa de este programa, no suya. Lo firmado y lo escrito se conserva. La falla está escrita en {path}.</translation>
    </message>
    <message>
      <source>Source</source>
      <translation>Fuente</translation>
    </message>
    <message>
      <source>source</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Source: {rule}.</source>
      <translation>Fuente: {rule}.</translation>
    </message>
    <message>
      <source>Sp&amp;eed</source>
      <translation>&amp;Velocidad</translation>
    </message>
    <message>
      <source>space: mark start     enter: end     del: clear     esc: back</source>
      <translation>espacio: inicio     intro: fin     supr: borrar     esc: volver</translation>
    </message>
    <message>
      <source>speaks {cell}</source>
      <translation>habla {cell}</translation>
    </message>
    <message>
      <source>spec</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Specification</source>
      <translation>Especificación</translation>
    </message>
    <message>
      <source>Speed</source>
      <translation>Velocidad</translation>
    </message>
    <message>
      <source>split system</source>
      <translation>sistema split</translation>
    </message>
    <message>
      <source>stable</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Stand-alone retail food units, household refrigerators and freezers, self-contained room air conditioners and heat pumps, vending machines, self-contained ice machines, very low temperature equipment, water coolers; from 15 July 2024 food processing and dispensing equipment.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Stand-alone retail food units, household refrigerators and freezers, self-contained room air conditioners and heat pumps, vending machines.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Stand-alone retail food units, household refrigerators and freezers, vending machines.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Standard uncertainty</source>
      <translation>Incertidumbre estándar</translation>
    </message>
    <message>
      <source>standing</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Standing liquid takes condensing surface away.</source>
      <translation>El líquido acumulado quita superficie de condensación.</translation>
    </message>
    <message>
      <source>Standing liquid would raise it.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Standing time</source>
      <translation>Tiempo de reposo</translation>
    </message>
    <message>
      <source>Stands</source>
      <translation>Situación</translation>
    </message>
    <message>
      <source>Stands at</source>
      <translation>Está en</translation>
    </message>
    <message>
      <source>Start</source>
      <translation>Inicio</translation>
    </message>
    <message>
      <source>start</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Start reading</source>
      <translation>Lectura inicial</translation>
    </message>
    <message>
      <source>start {at}</source>
      <translation>inicio {at}</translation>
    </message>
    <message>
      <source>starting up</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Statement of disposal</source>
      <translation>Declaración de disposición</translation>
    </message>
    <message>
      <source>Statement of the last hand-over</source>
      <translation>Declaración de la última entrega</translation>
    </message>
    <message>
      <source>step</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>step not needed</source>
      <translation>paso no necesario</translation>
    </message>
    <message>
      <source>step signed</source>
      <translation>paso firmado</translation>
    </message>
    <message>
      <source>step-not-needed</source>
      <translation>paso no necesario</translation>
    </message>
    <message>
      <source>step-signed</source>
      <translation>paso firmado</translation>
    </message>
    <message>
      <source>Steps</source>
      <translation>Pasos</translation>
    </message>
    <message>
      <source>steps</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>still</source>
      <translation>quieto</translation>
    </message>
    <message>
      <source>still to go</source>
      <translation>falta</translation>
    </message>
    <message>
      <source>still to go: slowly</source>
      <translation>falta: despacio</translation>
    </message>
    <message>
      <source>Stoc&amp;k-take</source>
      <translation>In&amp;ventario</translation>
    </message>
    <message>
      <source>Stock</source>
      <translation>Existencias</translation>
    </message>
    <message>
      <source>stock</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Stock-take</source>
      <translation>Inventario</translation>
    </message>
    <message>
      <source>stock-take</source>
      <translation>inventario</translation>
    </message>
    <message>
      <source>Stock-take: {sentence}.</source>
      <translation>Inventario: {sentence}.</translation>
    </message>
    <message>
      <source>stocktake</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>stop</source>
      <translation>alto</translation>
    </message>
    <message>
      <source>Stop at {stop}.</source>
      <translation>Parar en {stop}.</translation>
    </message>
    <message>
      <source>Stop bits</source>
      <translation>Bits de parada</translation>
    </message>
    <message>
      <source>stop now</source>
      <translation>pare ahora</translation>
    </message>
    <message>
      <source>stop reading</source>
      <translation>lectura de parada</translation>
    </message>
    <message>
      <source>Stop reading, {cylinder}</source>
      <translation>Lectura de parada, {cylinder}</translation>
    </message>
    <message>
      <source>stop-reading</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Stop: {each}</source>
      <translation>Parar: {each}</translation>
    </message>
    <message>
      <source>stub pinched, brazed shut</source>
      <translation>tubo pellizcado, soldado</translation>
    </message>
    <message>
      <source>Subcooling</source>
      <translation>Subenfriamiento</translation>
    </message>
    <message>
      <source>subcooling</source>
      <translation>subenfriamiento</translation>
    </message>
    <message>
      <source>subprocess.Popen[str]</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>such as “5 min; 420 micron”</source>
      <translation>como “5 min; 420 micron”</translation>
    </message>
    <message>
      <source>Suction line and heat exchanger</source>
      <translation>Línea de succión e intercambiador</translation>
    </message>
    <message>
      <source>Suction line temperature</source>
      <translation>Temperatura de la línea de succión</translation>
    </message>
    <message>
      <source>suction line temperature</source>
      <translation>temperatura de la línea de succión</translation>
    </message>
    <message>
      <source>Suction pressure</source>
      <translation>Presión de succión</translation>
    </message>
    <message>
      <source>suction pressure</source>
      <translation>presión de succión</translation>
    </message>
    <message>
      <source>Suction, liquid and hot-gas headers</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>suction-line</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>suitable</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Suitable for flammable refrigerants</source>
      <translation>Apto para refrigerantes inflamables</translation>
    </message>
    <message>
      <source>Superheat</source>
      <translation>Sobrecalentamiento</translation>
    </message>
    <message>
      <source>superheat</source>
      <translation>sobrecalentamiento</translation>
    </message>
    <message>
      <source>Supplier</source>
      <translation>Proveedor</translation>
    </message>
    <message>
      <source>supplier</source>
      <translation>proveedor</translation>
    </message>
    <message>
      <source>support</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Switches, transducers and their tubes</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>System pressure</source>
      <translation>Presión del sistema</translation>
    </message>
    <message>
      <source>Ta&amp;ke back…</source>
      <translation>An&amp;ular…</translation>
    </message>
    <message>
      <source>tables</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Take back</source>
      <translation>Retirar</translation>
    </message>
    <message>
      <source>take back an entry of their own</source>
      <translation>anular un asiento propio</translation>
    </message>
    <message>
      <source>take back what somebody else signed</source>
      <translation>anular lo que firmó otra persona</translation>
    </message>
    <message>
      <source>Take in files</source>
      <translation>Incorporar archivos</translation>
    </message>
    <message>
      <source>take in what was recorded elsewhere</source>
      <translation>incorporar lo registrado en otro lugar</translation>
    </message>
    <message>
      <source>Take reading</source>
      <translation>Tomar lectura</translation>
    </message>
    <message>
      <source>taken</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>taken back</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Taken back; the entry stays on record.</source>
      <translation>Anulada; el asiento queda registrado.</translation>
    </message>
    <message>
      <source>taken in</source>
      <translation>incorporado</translation>
    </message>
    <message>
      <source>Taken in of {chain_words}.</source>
      <translation>Incorporado: {chain_words}.</translation>
    </message>
    <message>
      <source>Taken out for the season</source>
      <translation>Extraído por la temporada</translation>
    </message>
    <message>
      <source>taken out of service</source>
      <translation>puesto fuera de servicio</translation>
    </message>
    <message>
      <source>Taken out of service: label with date and signature says it is empty of refrigerant.</source>
      <translation>Puesto fuera de servicio: una etiqueta con fecha y firma dice que está vacío de refrigerante.</translation>
    </message>
    <message>
      <source>taken over from a bench</source>
      <translation>recibido de un banco</translation>
    </message>
    <message>
      <source>taken-in</source>
      <translation>incorporado</translation>
    </message>
    <message>
      <source>takes entry {reverses_number} back: {why}</source>
      <translation>anula el asiento {reverses_number}: {why}</translation>
    </message>
    <message>
      <source>Taking in what the shop knows …</source>
      <translation>Se incorpora lo que el taller sabe …</translation>
    </message>
    <message>
      <source>Taking in …</source>
      <translation>Incorporando …</translation>
    </message>
    <message>
      <source>tallest bar {most}</source>
      <translation>barra más alta {most}</translation>
    </message>
    <message>
      <source>tapped</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>tare</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Tare as weighed empty</source>
      <translation>Tara pesada en vacío</translation>
    </message>
    <message>
      <source>Tare stamped</source>
      <translation>Tara estampada</translation>
    </message>
    <message>
      <source>tare-loss</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>target</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>tcwgmrp</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>technician</source>
      <translation>técnico</translation>
    </message>
    <message>
      <source>tells nothing of</source>
      <translation>no dice nada de</translation>
    </message>
    <message>
      <source>Temperature</source>
      <translation>Temperatura</translation>
    </message>
    <message>
      <source>temperature</source>
      <translation>temperatura</translation>
    </message>
    <message>
      <source>Temperature [{temperature}]</source>
      <translation>Temperatura [{temperature}]</translation>
    </message>
    <message>
      <source>Temperature at end</source>
      <translation>Temperatura final</translation>
    </message>
    <message>
      <source>Temperature at start</source>
      <translation>Temperatura inicial</translation>
    </message>
    <message>
      <source>Temperature at the reading</source>
      <translation>Temperatura en la lectura</translation>
    </message>
    <message>
      <source>temperature difference</source>
      <translation>diferencia de temperatura</translation>
    </message>
    <message>
      <source>temperature drop across the drier</source>
      <translation>caída de temperatura en el secador</translation>
    </message>
    <message>
      <source>Temperature in</source>
      <translation>Temperatura en</translation>
    </message>
    <message>
      <source>temperature, {label}</source>
      <translation>temperatura, {label}</translation>
    </message>
    <message>
      <source>template</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Test</source>
      <translation>Prueba</translation>
    </message>
    <message>
      <source>Test pressure stays at or under the lowest design pressure on the nameplate of the side under test.</source>
      <translation>La presión de prueba queda en o bajo la menor presión de diseño de la placa para el lado probado.</translation>
    </message>
    <message>
      <source>Tested with dry nitrogen through a regulator and a relief valve; never with oxygen or compressed air.</source>
      <translation>Probado con nitrógeno seco por regulador y válvula de alivio; nunca con oxígeno ni aire comprimido.</translation>
    </message>
    <message>
      <source>tests</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Tests of repaired leaks</source>
      <translation>Pruebas de fugas reparadas</translation>
    </message>
    <message>
      <source>text</source>
      <translation>texto</translation>
    </message>
    <message>
      <source>Text of open steps is not signed and not checked.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Text of the guide</source>
      <translation>Texto de la guía</translation>
    </message>
    <message>
      <source>Text size (Ctrl+Plus, Ctrl+Minus)</source>
      <translation>Tamaño de texto (Ctrl+Más, Ctrl+Menos)</translation>
    </message>
    <message>
      <source>That is not the passphrase.{wait}</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>The &amp;same thing</source>
      <translation>La &amp;misma cosa</translation>
    </message>
    <message>
      <source>The backup {target} can not be written: {reason}.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>The balance of {key} says {mass_words} of {key_2}; its transfers give {mass_words_2}.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>The balances of {refrigerant} over all places sum to {mass_words}.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>The chain of bench {bench} does not end as the head of the file says.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>The charge is drawn here against the nameplate, once the nameplate charge is typed.</source>
      <translation>La carga se dibuja aquí contra la placa, en cuanto se escriba la carga de la placa.</translation>
    </message>
    <message>
      <source>The charge, weighed to the gram against the nameplate.</source>
      <translation>La carga, pesada al gramo contra la placa.</translation>
    </message>
    <message>
      <source>The circuit closed, labelled and left as it should be.</source>
      <translation>El circuito cerrado, etiquetado y dejado como debe estar.</translation>
    </message>
    <message>
      <source>The circuit is</source>
      <translation>El circuito está</translation>
    </message>
    <message>
      <source>The clock shows a time before the start; check it.</source>
      <translation>El reloj muestra una hora anterior al inicio; revíselo.</translation>
    </message>
    <message>
      <source>The compressor is neither run nor tested for insulation under vacuum, and never serves as the vacuum pump: its terminals arc over.</source>
      <translation>El compresor no se hace funcionar ni se prueba su aislación bajo vacío, y nunca sirve de bomba de vacío: sus bornes forman arco.</translation>
    </message>
    <message>
      <source>The copy holds {entries} entries.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>The curves hold from {low} to {high}; {left_out} rows outside are left out.</source>
      <translation>Las curvas valen de {low} a {high}; se omiten {left_out} filas fuera.</translation>
    </message>
    <message>
      <source>The cylinder stands steady and is never warmed by a flame, nor above 50 °C (122 °F).</source>
      <translation>El cilindro está firme y nunca se calienta con llama ni sobre 50 °C (122 °F).</translation>
    </message>
    <message>
      <source>The decay test is drawn here from the first reading on.</source>
      <translation>La prueba de mantenimiento de vacío se dibuja aquí desde la primera lectura.</translation>
    </message>
    <message>
      <source>The detector answered before and after the search.</source>
      <translation>El detector respondió antes y después de la búsqueda.</translation>
    </message>
    <message>
      <source>The detector failed its check {when} the search: search again.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>The detector was not checked {missing} the search.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>the disk does not answer as it should. Check the disk and its cable</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>the disk is full. Free some space and do it again</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>the disk of its server does not answer as it should. Tell its administrator</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>the disk of its server is full. Free some space there and do it again</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>The end counts other entries than the head.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>The end of each chain was compared with its kept head, with {count} heads kept at exports in this file and {count_2} kept elsewhere.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>the end of the file</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>The entry at place {at} can not be read: {why}.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>The entry nests deeper than 50 levels.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>The equipment was made for this refrigerant; hydrocarbon is never put into equipment made for another.</source>
      <translation>El equipo se hizo para este refrigerante; nunca se pone hidrocarburo en un equipo hecho para otro.</translation>
    </message>
    <message>
      <source>The evaporator gets too little liquid and the vapour is heated long after boiling.</source>
      <translation>El evaporador recibe poco líquido y el vapor se calienta mucho después de hervir.</translation>
    </message>
    <message>
      <source>The file can not be read on: {strerror}.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>The file can not be read: {said} ({orig}).</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>The file could not be read to its end, so little was checked.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>The file ends in the middle; it was cut short. {copy}</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>the file was held against what is known here</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>The file's pages are damaged: {damage}.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>The folder {folder} for backups can not be made: {strerror}. Move the shop file to a folder you may write in.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>The guard {name}, which keeps records from being changed, is not there.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>The guards against changing records and the pages of the file were examined.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>The head does not say which numbers of which chains follow.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>the head of a chain file</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>The head of the file names no entries of bench {bench}.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>the hose given at the weigh-in</source>
      <translation>la manguera dada en la carga por peso</translation>
    </message>
    <message>
      <source>The hose would hold more than left the cylinder.</source>
      <translation>La manguera tendría más de lo que salió del cilindro.</translation>
    </message>
    <message>
      <source>The hose's content can not be worked out from these readings.</source>
      <translation>El contenido de la manguera no puede calcularse con estas lecturas.</translation>
    </message>
    <message>
      <source>The job is closed; open it again with a reason to record here.</source>
      <translation>El trabajo está cerrado; reábralo con un motivo para registrar aquí.</translation>
    </message>
    <message>
      <source>The login {login} already records as bench {already}.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>The login {user} is not let into the shop in {dbname}. The shop's owner lets it in with: chargebench join-shop --login {user}.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>the maker</source>
      <translation>el fabricante</translation>
    </message>
    <message>
      <source>The maker's expected figures, calls and authorisations.</source>
      <translation>Valores esperados del fabricante, llamadas y autorizaciones.</translation>
    </message>
    <message>
      <source>The mass lines of entry {number} are not numbered as written.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>The nameplate says {read}, the register {registered}. Correct the one that is wrong.</source>
      <translation>La placa dice {read}, el catálogo {registered}. Corrija el que esté mal.</translation>
    </message>
    <message>
      <source>The newest backup is still the same.</source>
      <translation>La copia más reciente sigue siendo igual.</translation>
    </message>
    <message>
      <source>the number {value:g}</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>The passphrase is set.</source>
      <translation>La contraseña está fijada.</translation>
    </message>
    <message>
      <source>The person at work is trained for this refrigerant and holds the certificate the law asks for.</source>
      <translation>Quien trabaja está capacitado para este refrigerante y tiene el certificado que pide la ley.</translation>
    </message>
    <message>
      <source>The photo of entry {number} is kept at the bench that attached it; its hash is on record here.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>The picture {name}… was changed: its content has another hash.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>The pressure falls: shut the pump off, let the temperature settle, and start again.</source>
      <translation>La presión baja: cierre la bomba, deje asentar la temperatura y empiece de nuevo.</translation>
    </message>
    <message>
      <source>The pressure goes on rising in a straight line.</source>
      <translation>La presión sigue subiendo en línea recta.</translation>
    </message>
    <message>
      <source>The pressure test is drawn here from the first reading with a temperature on.</source>
      <translation>La prueba de presión se dibuja aquí desde la primera lectura con temperatura.</translation>
    </message>
    <message>
      <source>The property process could not be started ({reason}).</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>The property process did not answer within {seconds:g} s; try again.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>The property process did not start within {seconds:g} s.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>The property process ended twice without an answer; gas densities are not available.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>The pump is valved off: the decay test starts at this moment.</source>
      <translation>La bomba está aislada: la prueba de mantenimiento de vacío empieza en este momento.</translation>
    </message>
    <message>
      <source>The reading still moves: wait until it rests, then press again.</source>
      <translation>La lectura aún se mueve: espere a que repose y pulse de nuevo.</translation>
    </message>
    <message>
      <source>The readings fit more than one cause so far.</source>
      <translation>Las lecturas encajan hasta ahora con más de una causa.</translation>
    </message>
    <message>
      <source>The readings scatter too much to tell: look at the gauge, its place and its hose.</source>
      <translation>Las lecturas se dispersan demasiado: mire el manómetro, su lugar y su manguera.</translation>
    </message>
    <message>
      <source>The regulator is closed off: the pressure test starts at this moment.</source>
      <translation>El regulador está cerrado: la prueba de presión empieza en este momento.</translation>
    </message>
    <message>
      <source>The required recovery is {outcome}. Go on recovering, or record the level reached.</source>
      <translation>La recuperación exigida está: {outcome}. Siga recuperando o registre el nivel alcanzado.</translation>
    </message>
    <message>
      <source>The rise levels off as it does over water or wet oil.</source>
      <translation>La subida se nivela como sobre agua o aceite húmedo.</translation>
    </message>
    <message>
      <source>The room is not closed in and air moves through it: vapour displaces air, low down first.</source>
      <translation>El local no está cerrado y el aire circula: el vapor desplaza el aire, primero abajo.</translation>
    </message>
    <message>
      <source>the same</source>
      <translation>lo mismo</translation>
    </message>
    <message>
      <source>The same as {refrigerant}, an order of magnitude</source>
      <translation>Lo mismo como {refrigerant}, un orden de magnitud</translation>
    </message>
    <message>
      <source>The scale against the ledger.</source>
      <translation>La balanza contra el libro.</translation>
    </message>
    <message>
      <source>The search does not count: {void}.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>the server counted {failures} pages with a wrong checksum</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>The server of {address} forgets what it confirmed when the power fails (its setting fsync is off). Have its administrator turn fsync on.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>The shop's rule file does not count: {refusal} {chosen} counts alone.</source>
      <translation>El archivo de reglas del taller no cuenta: {refusal} {chosen} cuenta solo.</translation>
    </message>
    <message>
      <source>The sorting time of entry {number} is not its own.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>The text contains half of a character that no file can store; type it again.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>the text of {lost_typed} open steps</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>The total of {refrigerant} from {source} to {target} on {day} at bench {bench} is not what the entries of the day give.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>The transfer names no refrigerant.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>The vacuum pump's outlet is in moving air and away from anything that can ignite gas.</source>
      <translation>La salida de la bomba de vacío está en aire en movimiento y lejos de lo que pueda encender gas.</translation>
    </message>
    <message>
      <source>The whole rise stays within what a tight, dry system shows.</source>
      <translation>Toda la subida queda dentro de lo que muestra un sistema estanco y seco.</translation>
    </message>
    <message>
      <source>The {key} row {key_2} is not what the last entry about it says.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>The {which} reading stands far off the others: read on, and strike it out if it was wrong.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Then in {cylinder}</source>
      <translation>Luego en {cylinder}</translation>
    </message>
    <message>
      <source>there</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>There are readings already. Take their lines out of the form to start again.</source>
      <translation>Ya hay lecturas. Quite sus líneas del formulario para empezar de nuevo.</translation>
    </message>
    <message>
      <source>There are readings already. Take their lines out of the form, then add a series.</source>
      <translation>Ya hay lecturas. Quite sus líneas del formulario y añada luego una serie.</translation>
    </message>
    <message>
      <source>There is a bench {letter} already; {next_bench} is free.</source>
      <translation>Ya hay un banco {letter}; {next_bench} está libre.</translation>
    </message>
    <message>
      <source>There is a chain of bench {bench} in this shop already, and two computers can not go on with one. Choose another name for the bench.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>There is a shop in {address} already. Open it.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>There is hardly any liquid left standing in the condenser.</source>
      <translation>Apenas queda líquido en el condensador.</translation>
    </message>
    <message>
      <source>There is no backup beside this file.</source>
      <translation>No hay copia junto a este archivo.</translation>
    </message>
    <message>
      <source>There is no entry {entry_id} in this shop.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>There is no file {old} and no backup of it; check the path.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>There is no file {path}. Check the path, or make a new shop.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>There is no folder {parent}. Make it, or choose another.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>There is no picture to paste; copy one first.</source>
      <translation>No hay imagen que pegar; copie una primero.</translation>
    </message>
    <message>
      <source>There is no shop in the database {dbname} of {host}. Whoever is to own it makes one with: chargebench make-shop.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>There is no such entry to reverse.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>There is no such job in this shop.</source>
      <translation>No hay tal trabajo en este taller.</translation>
    </message>
    <message>
      <source>There is no such job in this shop; open the job first.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>There is no time span to reckon a loss over.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>thermometer</source>
      <translation>termómetro</translation>
    </message>
    <message>
      <source>Thermometer uncertainty</source>
      <translation>Incertidumbre del termómetro</translation>
    </message>
    <message>
      <source>This bench</source>
      <translation>Este banco</translation>
    </message>
    <message>
      <source>This chain file is of another shop. Take in files of benches that were begun from this shop's own.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>This chain file is of version {int}; this program reads up to version {version}. Take it in with a newer chargebench.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>this computer</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>This computer becomes a further bench of a shop there is already: choose the chain file that was handed over there to begin one.</source>
      <translation>Este equipo será otro banco de un taller existente: elija el archivo de cadena que se entregó allí para iniciar uno.</translation>
    </message>
    <message>
      <source>This conflict is not open any more.</source>
      <translation>Este conflicto ya no está abierto.</translation>
    </message>
    <message>
      <source>This entry is of a newer format. Take the file in with a newer chargebench.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>This is less than the tare of {cylinder}; check cylinder and scale.</source>
      <translation>Es menos que la tara de {cylinder}; revise cilindro y balanza.</translation>
    </message>
    <message>
      <source>This job is already open under another entry.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>this login has no right to that. Ask the shop's owner</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>This looks like seven data bits; try 7 bits with even or odd parity.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>This loss</source>
      <translation>Esta pérdida</translation>
    </message>
    <message>
      <source>This moment already has a reading; wait for the next one.</source>
      <translation>Este momento ya tiene una lectura; espere a la siguiente.</translation>
    </message>
    <message>
      <source>this month</source>
      <translation>este mes</translation>
    </message>
    <message>
      <source>This photo is kept at the bench that attached it.</source>
      <translation>Esta foto se guarda en el banco que la adjuntó.</translation>
    </message>
    <message>
      <source>This program knows no step “{step}”. Take the file in with a newer chargebench.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>This refrigerant</source>
      <translation>Este refrigerante</translation>
    </message>
    <message>
      <source>This scale can not decide. {finer}</source>
      <translation>Esta balanza no puede decidir. {finer}</translation>
    </message>
    <message>
      <source>This scale decides; one of up to {enough} resolution would, with all other doubt as it is.</source>
      <translation>Esta balanza decide; una de hasta {enough} de resolución lo haría, con el resto de la duda igual.</translation>
    </message>
    <message>
      <source>This shop can not be opened</source>
      <translation>Este taller no se puede abrir</translation>
    </message>
    <message>
      <source>This shop is open only to be read; nothing is recorded from here.</source>
      <translation>Este taller está abierto solo para leer; nada se registra desde aquí.</translation>
    </message>
    <message>
      <source>this year</source>
      <translation>este año</translation>
    </message>
    <message>
      <source>thread</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Threshold</source>
      <translation>Umbral</translation>
    </message>
    <message>
      <source>threshold</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>thresholds</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>ticked</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>ticked by {person}, {at}</source>
      <translation>marcado por {person}, {at}</translation>
    </message>
    <message>
      <source>ticks</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>tight</source>
      <translation>estanco</translation>
    </message>
    <message>
      <source>time</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>time span</source>
      <translation>lapso</translation>
    </message>
    <message>
      <source>Time still needed for it</source>
      <translation>Tiempo que aún falta para ello</translation>
    </message>
    <message>
      <source>Time, parts</source>
      <translation>Tiempo, piezas</translation>
    </message>
    <message>
      <source>time-needed</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>time-still-needed</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Times broken with nitrogen</source>
      <translation>Veces roto con nitrógeno</translation>
    </message>
    <message>
      <source>title</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>To begin a further bench, {letter}</source>
      <translation>Para empezar otro banco, {letter}</translation>
    </message>
    <message>
      <source>To compare with; else equipment of the same make and model.</source>
      <translation>Para comparar; si no, un equipo de igual marca y modelo.</translation>
    </message>
    <message>
      <source>today</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Today's is {how}; the band is {within}.</source>
      <translation>Hoy es {how}; la banda es {within}.</translation>
    </message>
    <message>
      <source>Today's is {how}; the maker gave no tolerance.</source>
      <translation>Hoy es {how}; el fabricante no dio tolerancia.</translation>
    </message>
    <message>
      <source>Tolerance</source>
      <translation>Tolerancia</translation>
    </message>
    <message>
      <source>tolerance</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Tolerance, either side</source>
      <translation>Tolerancia, a cada lado</translation>
    </message>
    <message>
      <source>tonne|tonnes</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Too little air leaves liquid unboiled, so the superheat falls.</source>
      <translation>Con poco aire queda líquido sin hervir y el sobrecalentamiento baja.</translation>
    </message>
    <message>
      <source>Too little air or ice on the coil leaves liquid unboiled.</source>
      <translation>Poco aire o hielo en el serpentín deja líquido sin hervir.</translation>
    </message>
    <message>
      <source>Too little air would let frost grow over the whole coil.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Too little air would make it colder.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Too little charge gives the condenser less heat to shed.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Too little refrigerant to cool the coil.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Too many wrong tries. Try again in 1 second.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Too many wrong tries. Try again in {left} s.</source>
      <translation>Demasiados intentos erróneos. Inténtelo en {left} s.</translation>
    </message>
    <message>
      <source>Too many wrong tries. Try again in {seconds} seconds.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Too much charge does not leave a coil dry.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Too much charge feeds the evaporator rather more.</source>
      <translation>La sobrecarga alimenta más bien de más al evaporador.</translation>
    </message>
    <message>
      <source>Too much charge frosts evenly too.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Too much charge raises the boiling temperature.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Too much charge spills over into the suction line.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Too much charge would fill the coil.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Too much charge would stand as more subcooling.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Too small for it: {figures}</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>topped-up-sealed</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Torr</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>torr</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Totals</source>
      <translation>Totales</translation>
    </message>
    <message>
      <source>Totals by refrigerant</source>
      <translation>Totales por refrigerante</translation>
    </message>
    <message>
      <source>Totals of the period</source>
      <translation>Totales del período</translation>
    </message>
    <message>
      <source>toxic, </source>
      <translation>tóxico, </translation>
    </message>
    <message>
      <source>Toxicity or oxygen limit</source>
      <translation>Límite de toxicidad u oxígeno</translation>
    </message>
    <message>
      <source>Trace gas</source>
      <translation>Gas trazador</translation>
    </message>
    <message>
      <source>trace gas</source>
      <translation>gas trazador</translation>
    </message>
    <message>
      <source>trace-gas</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Transfer</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>transfer</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>translations</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Travel</source>
      <translation>Viaje</translation>
    </message>
    <message>
      <source>travel</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>true</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>true or false</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>truncate</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>trusted_schema=OFF</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Try again now.</source>
      <translation>Inténtelo ahora.</translation>
    </message>
    <message>
      <source>twice</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Two columns (*.txt *.csv *.tsv *.log);;All files (*)</source>
      <translation>Dos columnas (*.txt *.csv *.tsv *.log);;Todos los archivos (*)</translation>
    </message>
    <message>
      <source>Two columns from the clipboard: time and reading, with units.</source>
      <translation>Dos columnas del portapapeles: tiempo y lectura, con unidades.</translation>
    </message>
    <message>
      <source>two columns, time and reading</source>
      <translation>dos columnas, tiempo y lectura</translation>
    </message>
    <message>
      <source>two or three columns</source>
      <translation>dos o tres columnas</translation>
    </message>
    <message>
      <source>Type</source>
      <translation>Tipo</translation>
    </message>
    <message>
      <source>type the reading</source>
      <translation>escriba la lectura</translation>
    </message>
    <message>
      <source>type the scale's reading</source>
      <translation>escriba la lectura de la balanza</translation>
    </message>
    <message>
      <source>Type what the scale shows.</source>
      <translation>Escriba lo que muestra la balanza.</translation>
    </message>
    <message>
      <source>typed</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>typed {live_text}{unit}</source>
      <translation>escrito {live_text}{unit}</translation>
    </message>
    <message>
      <source>ultrasonic</source>
      <translation>ultrasonido</translation>
    </message>
    <message>
      <source>Unaccounted</source>
      <translation>Sin justificar</translation>
    </message>
    <message>
      <source>unaccounted-mass</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>uncertainty</source>
      <translation>incertidumbre</translation>
    </message>
    <message>
      <source>Uncertainty of a thermometer</source>
      <translation>Incertidumbre de un termómetro</translation>
    </message>
    <message>
      <source>Under</source>
      <translation>Según</translation>
    </message>
    <message>
      <source>under</source>
      <translation>por debajo</translation>
    </message>
    <message>
      <source>under box air</source>
      <translation>bajo el aire de cámara</translation>
    </message>
    <message>
      <source>Under nameplate by {size}: {charged} of {nameplate}. Weigh in the rest.</source>
      <translation>Bajo la placa por {size}: {charged} de {nameplate}. Cargue el resto por peso.</translation>
    </message>
    <message>
      <source>Under nameplate by {text} {doubt}</source>
      <translation>Bajo la placa por {text} {doubt}</translation>
    </message>
    <message>
      <source>under the caps</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>under the insulation</source>
      <translation>bajo el aislamiento</translation>
    </message>
    <message>
      <source>under vacuum air leaks in, by at most the air's pressure, past dried or frozen spots; a rise is never turned into grams a year</source>
      <translation>bajo vacío entra aire, a lo sumo con la presión atmosférica, por puntos secos o congelados; una subida nunca se convierte en gramos al año</translation>
    </message>
    <message>
      <source>under-nameplate</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Understood {count} readings ({source}):</source>
      <translation>Se entendieron {count} lecturas ({source}):</translation>
    </message>
    <message>
      <source>union joints</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>unit</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>units</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Units shown</source>
      <translation>Unidades mostradas</translation>
    </message>
    <message>
      <source>Universal, Type I, A1</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>unknown</source>
      <translation>desconocido</translation>
    </message>
    <message>
      <source>Unt&amp;il</source>
      <translation>&amp;Hasta</translation>
    </message>
    <message>
      <source>Unterminated string</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Until</source>
      <translation>Hasta</translation>
    </message>
    <message>
      <source>until</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Until it does, this bench can go on in a file of its own and hand over its entries later.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Until, last day</source>
      <translation>Hasta, último día</translation>
    </message>
    <message>
      <source>unverified</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>up to {until}</source>
      <translation>hasta {until}</translation>
    </message>
    <message>
      <source>update</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>US or ?</source>
      <translation>US o ?</translation>
    </message>
    <message>
      <source>Usa&amp;ge</source>
      <translation>&amp;Uso</translation>
    </message>
    <message>
      <source>Usage</source>
      <translation>Uso</translation>
    </message>
    <message>
      <source>Usage by month</source>
      <translation>Uso por mes</translation>
    </message>
    <message>
      <source>Usage log</source>
      <translation>Registro de uso</translation>
    </message>
    <message>
      <source>usage log</source>
      <translation>registro de uso</translation>
    </message>
    <message>
      <source>user</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>usual</source>
      <translation>usual</translation>
    </message>
    <message>
      <source>usual {band}</source>
      <translation>usual {band}</translation>
    </message>
    <message>
      <source>Vacuum</source>
      <translation>Vacío</translation>
    </message>
    <message>
      <source>vacuum</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Vacuum and decay test</source>
      <translation>Vacío y prueba de mantenimiento</translation>
    </message>
    <message>
      <source>Vacuum gauge</source>
      <translation>Vacuómetro</translation>
    </message>
    <message>
      <source>vacuum gauge</source>
      <translation>vacuómetro</translation>
    </message>
    <message>
      <source>vacuum not deep enough</source>
      <translation>vacío no suficiente</translation>
    </message>
    <message>
      <source>Vacuum pump</source>
      <translation>Bomba de vacío</translation>
    </message>
    <message>
      <source>vacuum pump</source>
      <translation>bomba de vacío</translation>
    </message>
    <message>
      <source>vacuum-not-deep</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Valid until</source>
      <translation>Válido hasta</translation>
    </message>
    <message>
      <source>value</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>values</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>valve fault</source>
      <translation>falla de la válvula</translation>
    </message>
    <message>
      <source>Valve thread</source>
      <translation>Rosca de la válvula</translation>
    </message>
    <message>
      <source>vapour</source>
      <translation>vapor</translation>
    </message>
    <message>
      <source>Vapour [{density}]</source>
      <translation>Vapor [{density}]</translation>
    </message>
    <message>
      <source>vapour at suction pressure</source>
      <translation>vapor a presión de succión</translation>
    </message>
    <message>
      <source>vapour density</source>
      <translation>densidad del vapor</translation>
    </message>
    <message>
      <source>Vapour drawn from a zeotrope has another composition than the liquid: take it as liquid and let it expand before the suction side.</source>
      <translation>El vapor de un zeótropo tiene otra composición que el líquido: extráigalo líquido y déjelo expandir antes del lado de succión.</translation>
    </message>
    <message>
      <source>ventilated</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>ventilation</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>verdict</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Verif&amp;y again</source>
      <translation>Verif&amp;icar de nuevo</translation>
    </message>
    <message>
      <source>verified</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Verified tight</source>
      <translation>Verificado estanco</translation>
    </message>
    <message>
      <source>very high</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>virgin</source>
      <translation>virgen</translation>
    </message>
    <message>
      <source>volume</source>
      <translation>volumen</translation>
    </message>
    <message>
      <source>walk-in or remote condensing</source>
      <translation>cámara o condensación remota</translation>
    </message>
    <message>
      <source>wall passages, rubbing, nails</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Warning labels and red marks are in place and can be read; replaced where they are not.</source>
      <translation>Etiquetas de advertencia y marcas rojas en su lugar y legibles; si no, reemplazadas.</translation>
    </message>
    <message>
      <source>was due for requalification on {due}</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Watch on before charging.</source>
      <translation>Siga observando antes de cargar.</translation>
    </message>
    <message>
      <source>Watch on for</source>
      <translation>Seguir observando</translation>
    </message>
    <message>
      <source>Watched for</source>
      <translation>Observado durante</translation>
    </message>
    <message>
      <source>water</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Water boils at the coldest part below</source>
      <translation>El agua hierve en la parte más fría por debajo de</translation>
    </message>
    <message>
      <source>Water capacity</source>
      <translation>Capacidad de agua</translation>
    </message>
    <message>
      <source>Weigh</source>
      <translation>Pesar</translation>
    </message>
    <message>
      <source>weigh</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Weigh every cylinder in one go</source>
      <translation>Pesar todos los cilindros de una vez</translation>
    </message>
    <message>
      <source>Weigh-in</source>
      <translation>Carga por peso</translation>
    </message>
    <message>
      <source>weigh-in</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>weighed</source>
      <translation>pesado</translation>
    </message>
    <message>
      <source>Weighings</source>
      <translation>Pesajes</translation>
    </message>
    <message>
      <source>weight</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>What</source>
      <translation>Qué</translation>
    </message>
    <message>
      <source>what</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>What a chain can not prove:</source>
      <translation>Lo que una cadena no puede probar:</translation>
    </message>
    <message>
      <source>What a cylinder is and how far it may be filled.</source>
      <translation>Qué es un cilindro y hasta dónde puede llenarse.</translation>
    </message>
    <message>
      <source>What comes now</source>
      <translation>Lo que llega ahora</translation>
    </message>
    <message>
      <source>What fits in {register}</source>
      <translation>Lo que coincide en {register}</translation>
    </message>
    <message>
      <source>What is known</source>
      <translation>Lo que se sabe</translation>
    </message>
    <message>
      <source>What is printed on; left empty, as this computer's country has it.</source>
      <translation>En qué se imprime; vacío: como es usual en el país de este equipo.</translation>
    </message>
    <message>
      <source>What is to be looked at again, when, and how it turned out.</source>
      <translation>Qué mirar de nuevo, cuándo, y cómo resultó.</translation>
    </message>
    <message>
      <source>What is too much stands as liquid in the condenser.</source>
      <translation>Lo que sobra queda como líquido en el condensador.</translation>
    </message>
    <message>
      <source>What is typed is worked out here.</source>
      <translation>Lo que se escribe se calcula aquí.</translation>
    </message>
    <message>
      <source>What speaks for which fault</source>
      <translation>Qué apunta a cada falla</translation>
    </message>
    <message>
      <source>What the nameplate says, as read on the equipment today.</source>
      <translation>Lo que dice la placa, leída hoy en el equipo.</translation>
    </message>
    <message>
      <source>What the photo shows</source>
      <translation>Lo que muestra la foto</translation>
    </message>
    <message>
      <source>What the search can see is not known.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>What the visit took.</source>
      <translation>Lo que llevó la visita.</translation>
    </message>
    <message>
      <source>What to look at</source>
      <translation>Qué mirar</translation>
    </message>
    <message>
      <source>What unlocks the signature of {name}</source>
      <translation>Lo que desbloquea la firma de {name}</translation>
    </message>
    <message>
      <source>What was found, why it happened, and what was set differently.</source>
      <translation>Qué se halló, por qué ocurrió y qué se ajustó de otro modo.</translation>
    </message>
    <message>
      <source>What was in the equipment before was not weighed, so the mass alone can not tell whether the charge is right.</source>
      <translation>Lo que había antes en el equipo no se pesó, así que la masa sola no dice si la carga es correcta.</translation>
    </message>
    <message>
      <source>What was taken out, into which cylinder, down to which level.</source>
      <translation>Qué se extrajo, a qué cilindro, hasta qué nivel.</translation>
    </message>
    <message>
      <source>What, by how much, what to do</source>
      <translation>Qué, cuánto, qué hacer</translation>
    </message>
    <message>
      <source>When</source>
      <translation>Cuándo</translation>
    </message>
    <message>
      <source>when</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>When it was done, if not now: 2026-11-25 14:30</source>
      <translation>Cuándo se hizo, si no es ahora: 2026-11-25 14:30</translation>
    </message>
    <message>
      <source>Where</source>
      <translation>Dónde</translation>
    </message>
    <message>
      <source>where</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Where equipment stands and who answers for it.</source>
      <translation>Dónde están los equipos y quién responde por ellos.</translation>
    </message>
    <message>
      <source>Where it is taken out of service: what was done, and who takes the equipment.</source>
      <translation>Donde se pone fuera de servicio: qué se hizo y quién se lleva el equipo.</translation>
    </message>
    <message>
      <source>where it meets the coil</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Where the work is done</source>
      <translation>Dónde se trabaja</translation>
    </message>
    <message>
      <source>Where was searched, with what, and what was found.</source>
      <translation>Dónde se buscó, con qué y qué se halló.</translation>
    </message>
    <message>
      <source>Whether entry {entry} is reversed is not what the entries say.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Whether the entry at place {position} ({kind}) names {place} is not what it says.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Whether this was recorded in {place} is not known yet; do it again when the server answers: it is asked first, and nothing is recorded twice</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Which jobs</source>
      <translation>Qué trabajos</translation>
    </message>
    <message>
      <source>who</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Who keeps these records, in which units, under which rules.</source>
      <translation>Quién lleva estos registros, en qué unidades, bajo qué reglas.</translation>
    </message>
    <message>
      <source>Who signs</source>
      <translation>Quién firma</translation>
    </message>
    <message>
      <source>Who signs, and by which certificate.</source>
      <translation>Quién firma y con qué certificado.</translation>
    </message>
    <message>
      <source>Whoever rewrites the file with all its hashes and kept heads, or cuts off its end and every head kept in it, leaves a chain that agrees with itself. Only a head kept elsewhere, as in the manifest of an export, shows that.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Why</source>
      <translation>Por qué</translation>
    </message>
    <message>
      <source>why</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Why (may stay empty)</source>
      <translation>Por qué (puede quedar vacío)</translation>
    </message>
    <message>
      <source>Why is entry {entry_number} taken back? It stays in the records, and a further entry reverses it.</source>
      <translation>¿Por qué se anula el asiento {entry_number}? Queda en los registros y otro asiento lo anula.</translation>
    </message>
    <message>
      <source>Why is entry {step_number} taken back? It stays in the records, and a further entry reverses it; the text opens again to be mended.</source>
      <translation>¿Por qué se anula el asiento {step_number}? Queda en los registros y otro asiento lo anula; el texto se abre de nuevo para corregirlo.</translation>
    </message>
    <message>
      <source>Why is this job opened again?</source>
      <translation>¿Por qué se reabre este trabajo?</translation>
    </message>
    <message>
      <source>Why is {step} not needed?</source>
      <translation>¿Por qué no es necesario {step}?</translation>
    </message>
    <message>
      <source>Why release is lawful</source>
      <translation>Por qué la liberación es legal</translation>
    </message>
    <message>
      <source>Why the method was changed</source>
      <translation>Por qué se cambió el método</translation>
    </message>
    <message>
      <source>Why the photo is taken back</source>
      <translation>Por qué se anula la foto</translation>
    </message>
    <message>
      <source>Why, then Return</source>
      <translation>El motivo, luego Intro</translation>
    </message>
    <message>
      <source>Will be written, for {words}{narrowed}: {workbook} (every job, entry, transfer and test with its totals), {tables} (the same as CSV and SQLite), {checklist} (the flammable-refrigerant handling lists), {reports} and {jobs} (a report and a job file for each job), {calendar} (what is due, for a calendar), and a manifest with the SHA-256 of each and the head of the chain.</source>
      <translation>Se escribirá, para {words}{narrowed}: {workbook} (cada trabajo, asiento, transferencia y prueba con sus totales), {tables} (lo mismo en CSV y SQLite), {checklist} (las listas de manejo de refrigerantes inflamables), {reports} y {jobs} (un informe y un archivo de trabajo por cada trabajo), {calendar} (lo que vence, para un calendario) y un manifiesto con el SHA-256 de cada uno y la cabeza de la cadena.</translation>
    </message>
    <message>
      <source>Will be written: every entry known here, as it was signed, with its hash. The other bench takes the file in under Records; what it has already is passed over.</source>
      <translation>Se escribirá: cada asiento conocido aquí, tal como se firmó, con su hash. El otro banco incorpora el archivo en Registros; lo que ya tiene se omite.</translation>
    </message>
    <message>
      <source>wind</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>windy</source>
      <translation>ventoso</translation>
    </message>
    <message>
      <source>With a capillary tube too much charge overfeeds.</source>
      <translation>Con tubo capilar la sobrecarga alimenta de más.</translation>
    </message>
    <message>
      <source>With little air the coil falls far below it.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>With too little air the superheat would fall.</source>
      <translation>Con poco aire bajaría el sobrecalentamiento.</translation>
    </message>
    <message>
      <source>With whom</source>
      <translation>Con quién</translation>
    </message>
    <message>
      <source>within</source>
      <translation>dentro</translation>
    </message>
    <message>
      <source>within the half-width given</source>
      <translation>dentro del semiancho dado</translation>
    </message>
    <message>
      <source>Within ±{text} of the nameplate {doubt}</source>
      <translation>Dentro de ±{text} de la placa {doubt}</translation>
    </message>
    <message>
      <source>Without a key it locks after</source>
      <translation>Sin teclas se bloquea tras</translation>
    </message>
    <message>
      <source>Without air it does not boil in the coil.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Without air the condenser acts as a dirty one.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Without pressure nothing comes out.</source>
      <translation>Sin presión no sale nada.</translation>
    </message>
    <message>
      <source>Without the fan there is too little air.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>word</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>words</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>work</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Work done on it</source>
      <translation>Trabajo realizado</translation>
    </message>
    <message>
      <source>workbook</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>worked</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Worked out</source>
      <translation>Calculado</translation>
    </message>
    <message>
      <source>Worked out by the ideal gas law; its error is in the doubt.</source>
      <translation>Calculado con la ley del gas ideal; su error está en la duda.</translation>
    </message>
    <message>
      <source>Worked out from entries {map}.</source>
      <translation>Calculado de los asientos {map}.</translation>
    </message>
    <message>
      <source>Working out …</source>
      <translation>Calculando …</translation>
    </message>
    <message>
      <source>workshop</source>
      <translation>taller</translation>
    </message>
    <message>
      <source>would have seen it</source>
      <translation>la habría visto</translation>
    </message>
    <message>
      <source>Written into {folder}: {names}; {count} files.</source>
      <translation>Escrito en {folder}: {names}; {count} archivos.</translation>
    </message>
    <message>
      <source>Written: {path}, {words}.</source>
      <translation>Escrito: {path}, {words}.</translation>
    </message>
    <message>
      <source>wrong-refrigerant</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>year</source>
      <translation>año</translation>
    </message>
    <message>
      <source>yes</source>
      <translation>sí</translation>
    </message>
    <message>
      <source>yes or no</source>
      <translation>sí o no</translation>
    </message>
    <message>
      <source>Your certificate number</source>
      <translation>Su número de certificado</translation>
    </message>
    <message>
      <source>Your login may not do that there. Have the server's administrator run: {statement};</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>Your name</source>
      <translation>Su nombre</translation>
    </message>
    <message>
      <source>Your shop</source>
      <translation>Su taller</translation>
    </message>
    <message>
      <source>zeotrope</source>
      <translation>zeótropo</translation>
    </message>
    <message>
      <source>zeroed display</source>
      <translation>indicador puesto a cero</translation>
    </message>
    <message>
      <source>{address} can not be read as an address; one such as postgresql://login@server/database was expected.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>{at}: Expected text in UTF-8; this byte is not. Save the file again as UTF-8.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>{at}: Nested more than {deepest} levels deep; no job file needs that.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>{begin} to {end}</source>
      <translation>{begin} a {end}</translation>
    </message>
    <message>
      <source>{best} would tell {first} from {second}{more}.</source>
      <translation>{best} distinguiría {first} de {second}{more}.</translation>
    </message>
    <message>
      <source>{called} {one} and {other} have the same {what} {number}. Open this flag and say whether they are one thing; both are then shown as one.</source>
      <translation>{called} {one} y {other} tienen el mismo {what} {number}. Abra este aviso y diga si son una sola cosa; ambos se muestran entonces como una.</translation>
    </message>
    <message>
      <source>{called} {row} has serial number {serial} here and {other_serial} at bench {bench}: perhaps two things under one id. Read the plate. If they are two, register one under another id and book what it holds over to it; then {settle}.</source>
      <translation>{called} {row} tiene aquí el número de serie {serial} y en el banco {bench} {other_serial}: quizá dos cosas con un identificador. Lea la placa. Si son dos, registre una con otro identificador y pase a ella lo que contiene; luego {settle}.</translation>
    </message>
    <message>
      <source>{capitalize}: {name}, by {on}.</source>
      <translation>{capitalize}: {name}, antes del {on}.</translation>
    </message>
    <message>
      <source>{co2e_t:.1f} t CO2 equivalent.</source>
      <translation>{co2e_t:.1f} t de CO2 equivalente.</translation>
    </message>
    <message>
      <source>{copy} could not be restored: {strerror}. The present file is kept as {path} or beside it under a name with “aside”.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>{copy} is damaged ({damage}). Choose another backup.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>{copy} was made by a newer chargebench. Install the newer program.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>{count} balances were summed anew from the mass lines; over all places every refrigerant must sum to zero.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>{count} entries recorded.</source>
      <translation>{count} asientos registrados.</translation>
    </message>
    <message>
      <source>{count} mass lines belong to place {at}, where no entry stands.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>{count} more (F8)</source>
      <translation>{count} más (F8)</translation>
    </message>
    <message>
      <source>{count} of {listed} lines of the safety list for {words} are open at {title}. First: {line}</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>{count} read from {source}</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>{count} readings</source>
      <translation>{count} lecturas</translation>
    </message>
    <message>
      <source>{count} readings, last {pascals} after {minutes:g} min, {corrected} less what temperature explains.</source>
      <translation>{count} lecturas, última {pascals} a los {minutes:g} min, {corrected} sin lo que explica la temperatura.</translation>
    </message>
    <message>
      <source>{count} register rows, {count_2} jobs and {count_3} reversals were rebuilt from the entries and compared.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>{currenttext} signs from now on{asks}.</source>
      <translation>{currenttext} firma desde ahora{asks}.</translation>
    </message>
    <message>
      <source>{cylinder_id} is non-refillable; recover into a refillable recovery cylinder.</source>
      <translation>{cylinder_id} no es recargable; recupere en un cilindro de recuperación recargable.</translation>
    </message>
    <message>
      <source>{cylinder_id} would hold {after}, over its limit of {limit} ({by}) by {over}; use another cylinder, or give the reason to fill it above the limit.</source>
      <translation>{cylinder_id} contendría {after}, sobre su límite de {limit} ({by}) por {over}; use otro cilindro o dé el motivo para llenarlo por encima.</translation>
    </message>
    <message>
      <source>{cylinder} holds {found}; the ledger has {expected}.</source>
      <translation>{cylinder} contiene {found}; el libro tiene {expected}.</translation>
    </message>
    <message>
      <source>{cylinder} is registered for {registered} and holds {held}. Do not use it; return it as a mixture.</source>
      <translation>{cylinder} está registrado para {registered} y contiene {held}. No lo use; devuélvalo como mezcla.</translation>
    </message>
    <message>
      <source>{cylinder} lost {share:.1f} % of its stamped tare. Requalify it before it is filled.</source>
      <translation>{cylinder} perdió {share:.1f} % de su tara estampada. Recalifíquelo antes de llenarlo.</translation>
    </message>
    <message>
      <source>{cylinder} stands at {mass} of {refrigerant} by the book. Put it on the scale and book the difference.</source>
      <translation>{cylinder} está en {mass} de {refrigerant} según el libro. Póngalo en la balanza y asiente la diferencia.</translation>
    </message>
    <message>
      <source>{cylinder} weighs {size} {more} than the ledger says. Why? The reason books the difference; without one it stays as it is, to be found out.</source>
      <translation>{cylinder} pesa {size} {more} de lo que dice el libro. ¿Por qué? El motivo asienta la diferencia; sin él queda como está, por averiguar.</translation>
    </message>
    <message>
      <source>{cylinder} weighs {size} {where} than the book says, beyond ±{tolerance}. Find out why, then book the difference.</source>
      <translation>{cylinder} pesa {size} {where} de lo que dice el libro, más allá de ±{tolerance}. Averigüe por qué y asiente la diferencia.</translation>
    </message>
    <message>
      <source>{cylinder} {when} ({word}). Do not fill it; what is in it may be used.</source>
      <translation>{cylinder} {when} ({word}). No lo llene; lo que contiene puede usarse.</translation>
    </message>
    <message>
      <source>{cylinder}: {difference} {more} than the ledger says, {booked}.</source>
      <translation>{cylinder}: {difference} {more} de lo que dice el libro, {booked}.</translation>
    </message>
    <message>
      <source>{days} days</source>
      <translation>{days} días</translation>
    </message>
    <message>
      <source>{days} months</source>
      <translation>{days} meses</translation>
    </message>
    <message>
      <source>{days} totals of days and {places} mentions of places were counted anew.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>{days} years</source>
      <translation>{days} años</translation>
    </message>
    <message>
      <source>{done} of {count} ticked; Space ticks</source>
      <translation>{done} de {count} marcados; espacio marca</translation>
    </message>
    <message>
      <source>{done} of {listed}</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>{done} of {listed} places were searched. Not searched: {names}.</source>
      <translation>Se revisaron {done} de {listed} lugares. Sin revisar: {names}.</translation>
    </message>
    <message>
      <source>{entries} entries were read ({chains}): numbers without a gap, each hash recomputed from what is stored and from the hash before it.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>{entries} entries were read{taken} and are in {path}.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>{entry} belongs to job {job}, which was closed meanwhile. It is recorded, but was not in sight when the job was closed. {look}</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>{entry} signs the step “{step}” of job {job}, which another bench has signed too. Both moved what they say they moved; take one back if it was done once, then {settle}.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>{entry} takes back what another bench had taken back already, so its masses were turned round twice. Weigh what it moved, book the difference, then {settle}.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>{expected}; this one can not be read.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>{expected}; this one names no database.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>{figure} from {start}.</source>
      <translation>{figure} desde {start}.</translation>
    </message>
    <message>
      <source>{file} can not be read: {trouble}.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>{file} has {size:.1f} MB; expected a text file of two columns, at most {bytes_most:g} MB.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>{first}: expected the shop and its people in the first file.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>{found} where the nameplate says {expected}. Do not charge; recover it as a mixture into a mixed-waste cylinder.</source>
      <translation>{found} donde la placa dice {expected}. No cargue; recupérelo como mezcla en un cilindro de residuos mezclados.</translation>
    </message>
    <message>
      <source>{holds} Going back leaves out {said}; the present file is kept aside with them.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>{holds} The present file can not be read, so what it holds beyond that can not be told; it is kept aside.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>{holds} The present file holds nothing beyond that.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>{instrument}: port</source>
      <translation>{instrument}: puerto</translation>
    </message>
    <message>
      <source>{key} “{words}” here, “{there}” there</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>{kilopascal} kPa ({psi} psi)</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>{kind} test tight</source>
      <translation>prueba ({kind}) estanca</translation>
    </message>
    <message>
      <source>{known}. A vacuum test can not prove tightness of a few grams a year.</source>
      <translation>{known}. Una prueba de vacío no puede probar estanquidad de unos gramos al año.</translation>
    </message>
    <message>
      <source>{label}, line {number}</source>
      <translation>{label}, línea {number}</translation>
    </message>
    <message>
      <source>{leak:.2g} mbar L/s</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>{leak}; go on for {minutes} more minutes.</source>
      <translation>{leak}; siga {minutes} minutos más.</translation>
    </message>
    <message>
      <source>{least} to {most}</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>{limit} to fill</source>
      <translation>{limit} por llenar</translation>
    </message>
    <message>
      <source>{lines} mass lines were compared with the hashed content of their entries.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>{lines} readings, by the certificate</source>
      <translation>{lines} lecturas, según el certificado</translation>
    </message>
    <message>
      <source>{lines} readings, each within half a step</source>
      <translation>{lines} lecturas, cada una a medio paso</translation>
    </message>
    <message>
      <source>{lost} entries, the last recorded {last}</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>{low} to {high} {label}</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>{make_says} Records are kept in {path}.</source>
      <translation>{make_says} Los registros se guardan en {path}.</translation>
    </message>
    <message>
      <source>{mass_mg!r} mg is not a mass that can be moved; whole milligrams from zero to a thousand tonnes were expected.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>{mass} to use</source>
      <translation>{mass} utilizable</translation>
    </message>
    <message>
      <source>{mass} too much</source>
      <translation>{mass} de más</translation>
    </message>
    <message>
      <source>{measure} {share:.0f} % of rated, {state}</source>
      <translation>{measure} {share:.0f} % del nominal, {state}</translation>
    </message>
    <message>
      <source>{mg} on {on}</source>
      <translation>{mg} el {on}</translation>
    </message>
    <message>
      <source>{minutes:.0f} more minutes would help to decide</source>
      <translation>{minutes:.0f} minutos más ayudarían a decidir</translation>
    </message>
    <message>
      <source>{minutes} min</source>
      <translation>{minutes} min</translation>
    </message>
    <message>
      <source>{minutes} min {rest} s</source>
      <translation>{minutes} min {rest} s</translation>
    </message>
    <message>
      <source>{missing} short of the nameplate: it had leaked, was never charged right, or is still in oil and hoses.</source>
      <translation>{missing} menos que la placa: se fugó, nunca se cargó bien o sigue en aceite y mangueras.</translation>
    </message>
    <message>
      <source>{name} can not be read ({why}).</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>{name} is larger than any photo; a picture of at most {most} MB was expected.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>{name} is not text; expected two columns, {example}.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>{name} is over its threshold by the {over} method. The method may change only while every appliance of the site is below by both.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>{name} is {mine} and may not {act}. Expected {who}.</source>
      <translation>{name} es {mine} y no puede: {act}. Se esperaba {who}.</translation>
    </message>
    <message>
      <source>{name} leaks {rate} a year, over the threshold of {threshold}. Next, by {by}: {owed}.</source>
      <translation>{name} pierde {rate} al año, sobre el umbral de {threshold}. Sigue, antes del {by}: {owed}.</translation>
    </message>
    <message>
      <source>{name} leaks {rate} a year, over the threshold of {threshold}. Overdue since {by}: {owed}.</source>
      <translation>{name} pierde {rate} al año, sobre el umbral de {threshold}. Vencido desde el {by}: {owed}.</translation>
    </message>
    <message>
      <source>{name} must have a leak detection system from {reaching} on, and none is on record. Fit one, or enter it in the register.</source>
      <translation>{name} debe tener un sistema de detección de fugas desde {reaching}, y no consta ninguno. Instale uno o anótelo en el catálogo.</translation>
    </message>
    <message>
      <source>{name} saturation is known here from {low} to {high}; got {given}.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>{name} signs</source>
      <translation>{name} firma</translation>
    </message>
    <message>
      <source>{name} signs without a passphrase. Ctrl+Shift+L sets one.</source>
      <translation>{name} firma sin contraseña. Ctrl+Mayús+L fija una.</translation>
    </message>
    <message>
      <source>{name} {line} temperature is known here from {low} to {high}, absolute; got {given}.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>{name}: {owed} was due on {by}.</source>
      <translation>{name}: {owed} vencía el {by}.</translation>
    </message>
    <message>
      <source>{number} further entries of bench {bench}</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>{number} {title}, from {name}</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>{one} beside {other}:</source>
      <translation>{one} junto a {other}:</translation>
    </message>
    <message>
      <source>{other} beside this file is a copy of this shop in which work went on by itself (bench {parted}). Nothing recorded there since is here. Keep it, look it through, and record here what is missing.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>{other} beside this file is a later copy of this shop, with {more}. Before anything is recorded here, go back to that file as to a backup.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>{out} can not be written: {reason}.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>{out} is there already; name a file that is not.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>{path} can not be read ({strerror}). Check the path and your rights to it.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>{path} can not be written: {strerror}.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>{path} holds {here} entries, its backup {newest} holds {entries}: an older copy was put in its place. Restore that backup; or bring what is in both into a new file: chargebench rescue --shop OLD --out NEW</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>{path} is kept on a server; a file is not put in its place. Whoever looks after the server restores its own backup.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>{path} is not a shop file. Choose the file this program made, or a backup of it from the folder {name}.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>{path} is open in another window. Close it there, then restore again.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>{path} is there already. Choose another name.</source>
      <translation>{path} ya existe. Elija otro nombre.</translation>
    </message>
    <message>
      <source>{path} is there already. Open it, or choose another name.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>{path} was copied while it was open, without {path_2}-wal, which belongs beside it and may hold what was recorded last. Put that file beside it; or restore the newest backup; or go on with what is here and in the backups, in a new file: chargebench rescue --shop OLD --out NEW</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>{path} was taken in before; nothing was recorded again.</source>
      <translation>{path} ya se incorporó; nada se registró de nuevo.</translation>
    </message>
    <message>
      <source>{path}, line {line}, {dotted}: {why}</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>{path}: can not be read as a text file.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>{path}: not a TOML file: {error}.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>{per_minute:.3g} {unit}/min</source>
      <translation>{per_minute:.3g} {unit}/min</translation>
    </message>
    <message>
      <source>{pictures} pictures were compared with the hashes they are kept under.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>{place} can not be used: {said}.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>{place} can not be used: {said}. {meanwhile}</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>{place} does not end as it was left: entry {number} of bench {bench} was the last, now it is {found} or its content differs. Verify the file, then restore a backup.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>{place} has all its guards; there is nothing to mend.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>{place} is damaged: a text in it can not be read.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>{place} is damaged: it does not say whose it is. Restore the newest backup.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>{place} is damaged: it has no {missing}. Restore the newest backup.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>{place} is damaged: it names no bench. Restore the newest backup.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>{place} is kept on a server, and so are its backups: whoever looks after the server makes and restores them. What an export writes here is kept beside them.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>{place} lost what keeps its records from being changed ({missing}): another tool was at it. Verify the file to see what was changed, then mend its guards, which is recorded, or restore a backup.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>{place} stood at {mass_words} of {refrigerant}; the entries that were read give {mass_words_2}.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>{place} was made by a newer chargebench (schema {version}, this one knows {count}). Install the newer program, or open a backup from before the upgrade.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>{place} was made by an older chargebench. Its owner, after a backup of the server, brings it up for every bench with: chargebench upgrade-shop.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>{place} was made by an older chargebench. Open it once in the window; a copy is kept before it is upgraded.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>{port} can not be listened to ({why}); trying again until it is back.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>{reason} The reading at {at:g} min fits none of this and was left out.</source>
      <translation>{reason} La lectura a los {at:g} min no encaja con nada de esto y se omitió.</translation>
    </message>
    <message>
      <source>{refrigerant} has no liquid at {temperature}; expected a filling ratio in the rule set. Fill by the ratio stamped on the cylinder.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>{refrigerant} into {name}</source>
      <translation>{refrigerant} a {name}</translation>
    </message>
    <message>
      <source>{refrigerant} went into cylinder {thing} at bench {bench}, and another refrigerant at another bench. Do not use it until it is known what is in it. {look}</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>{refrigerant}: from {first:.4g} at {first_2:g} {label} to {last:.4g} {label_2} at {last_2:g} {label}.</source>
      <translation>{refrigerant}: de {first:.4g} a {first_2:g} {label} hasta {last:.4g} {label_2} a {last_2:g} {label}.</translation>
    </message>
    <message>
      <source>{refrigerant}: saturation</source>
      <translation>{refrigerant}: saturación</translation>
    </message>
    <message>
      <source>{register} {row} was changed here and at bench {bench} ({differ}). The words {stands} stand, for they are the later ones. {look}</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>{row_id} is in the register already; choose another id.</source>
      <translation>{row_id} ya está en el catálogo; elija otro identificador.</translation>
    </message>
    <message>
      <source>{row_id} saved.</source>
      <translation>{row_id} guardado.</translation>
    </message>
    <message>
      <source>{rule_set}. Jurisdiction: {jurisdiction}. Edition {edition}, in effect from {effective}. Of its {count} figures {unverified} are not checked at their source; they are marked so wherever they decide.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>{rule}: {word}, end at most</source>
      <translation>{rule}: {word}, final como máximo</translation>
    </message>
    <message>
      <source>{rule}: {word}, rise to at most</source>
      <translation>{rule}: {word}, subida hasta como máximo</translation>
    </message>
    <message>
      <source>{rule}: {word}, start at most</source>
      <translation>{rule}: {word}, inicio como máximo</translation>
    </message>
    <message>
      <source>{said}, stop in {minutes}:{rest:02d}</source>
      <translation>{said}, parar en {minutes}:{rest:02d}</translation>
    </message>
    <message>
      <source>{says} (The figure behind it is {marks_said}.)</source>
      <translation>{says} (La cifra en que se basa está {marks_said}.)</translation>
    </message>
    <message>
      <source>{sentence} Reckoned for {which}, filled with saturated vapour at {at}; with liquid in it {liquid}, {share:.1f} % of the charge.</source>
      <translation>{sentence} Calculado para {which}, llena de vapor saturado a {at}; con líquido dentro {liquid}, {share:.1f} % de la carga.</translation>
    </message>
    <message>
      <source>{share} % short, if it goes on</source>
      <translation>{share} % de menos, si continúa así</translation>
    </message>
    <message>
      <source>{shop} is as it was in {copy}.{kept}</source>
      <translation>{shop} está como en {copy}.{kept}</translation>
    </message>
    <message>
      <source>{since} to {until}</source>
      <translation>{since} a {until}</translation>
    </message>
    <message>
      <source>{size:.1f} MB</source>
      <translation>{size:.1f} MB</translation>
    </message>
    <message>
      <source>{sources}, by mass from the components</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>{source} holds a mixture; it can only be returned.</source>
      <translation>{source} contiene una mezcla; solo puede devolverse.</translation>
    </message>
    <message>
      <source>{source} was not made to begin a bench. At the shop, hand over for a new bench: that gives it a letter of its own.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>{source}, limits of the verdict</source>
      <translation>{source}, límites del veredicto</translation>
    </message>
    <message>
      <source>{source}, practical limit</source>
      <translation>{source}, límite práctico</translation>
    </message>
    <message>
      <source>{step} signed, entry {number}.</source>
      <translation>{step} firmado, asiento {number}.</translation>
    </message>
    <message>
      <source>{text} could be {whole} or {decimal}; write it without a comma.</source>
      <translation>{text} puede ser {whole} o {decimal}; escríbalo sin coma.</translation>
    </message>
    <message>
      <source>{text} is outside what {kind} here can be ({lowest:g} to {highest:g} {base}); check the unit and decimal mark.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>{text} may be a vacuum or an absolute pressure; write -{value:g} inHg or {value:g} inHg vac for a vacuum, {value:g} inHg(a) for absolute.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>{title} is recorded already.</source>
      <translation>{title} ya está registrado.</translation>
    </message>
    <message>
      <source>{title} is signed already (entry {number}); reverse it with a reason to record it again.</source>
      <translation>{title} ya está firmado (asiento {number}); anúlelo con un motivo para registrarlo de nuevo.</translation>
    </message>
    <message>
      <source>{title} recorded as not needed.</source>
      <translation>{title} registrado como no necesario.</translation>
    </message>
    <message>
      <source>{title}: one or two?</source>
      <translation>{title}: ¿uno o dos?</translation>
    </message>
    <message>
      <source>{title}: {about}, entry {entry_number}.</source>
      <translation>{title}: {about}, asiento {entry_number}.</translation>
    </message>
    <message>
      <source>{total} in it is over the charge limit of {limit} ({title}). Recover down to the nameplate.</source>
      <translation>{total} dentro superan el límite de carga de {limit} ({title}). Recupere hasta lo que dice la placa.</translation>
    </message>
    <message>
      <source>{unverified} of {leaks} leaks found are not verified tight. Test them before refrigerant goes back in.</source>
      <translation>{unverified} de {leaks} fugas halladas no están verificadas estancas. Pruébelas antes de volver a poner refrigerante.</translation>
    </message>
    <message>
      <source>{value} is too large a number for an entry.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>{what} by {how} on {done_on}</source>
      <translation>{what} por {how} el {done_on}</translation>
    </message>
    <message>
      <source>{what} by {on}</source>
      <translation>{what} antes del {on}</translation>
    </message>
    <message>
      <source>{what}, reversed</source>
      <translation>{what}, anulado</translation>
    </message>
    <message>
      <source>{when}: nothing disagrees.</source>
      <translation>{when}: nada discrepa.</translation>
    </message>
    <message>
      <source>{when}: {count} disagree. Keep this file as it is and a backup.</source>
      <translation>{when}: {count} discrepancias. Conserve este archivo como está y una copia.</translation>
    </message>
    <message>
      <source>{where}, live</source>
      <translation>{where}, en vivo</translation>
    </message>
    <message>
      <source>{word} by {by}, {when}, entry {step_number}.{judged}</source>
      <translation>{word} por {by}, {when}, asiento {step_number}.{judged}</translation>
    </message>
    <message>
      <source>“{base}” is not one of {names}.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>“{base}” is not the rule set chosen, {over}.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>“{bench}” can not name a bench; a capital letter and up to seven more capitals or digits were expected, for example B. Job numbers begin with it.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>“{first}” may be minutes and seconds or hours and minutes; write 0:05:30, or a unit, as in 5.5 min.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>“{key}” is used twice.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>“{letter}” can not name a bench; a capital letter and up to seven more capitals or digits were expected, for example {next_bench}.</source>
      <translation>“{letter}” no puede nombrar un banco; se esperaba una mayúscula y hasta siete mayúsculas o cifras más, por ejemplo {next_bench}.</translation>
    </message>
    <message>
      <source>“{mark}” is not one of {marks}.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>“{name}” is not a table of {base}.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>“{name}” is not one of {classes}.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>“{number}” may be {whole} or {decimal}; say in the settings that the comma is the decimal mark.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>“{person}” is not in the register of people; choose somebody who is.</source>
      <translation>“{person}” no está en el catálogo de personas; elija a alguien que esté.</translation>
    </message>
    <message>
      <source>“{place}” is not a place: a cylinder, an equipment, or one of {fixed_places} was expected.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>“{safety_class}” is not one of {classes}.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>“{shown}” is not a refrigerant known here; did you mean {near}?</source>
      <translation>“{shown}” no es un refrigerante conocido aquí; ¿quiso decir {near}?</translation>
    </message>
    <message>
      <source>“{shown}” is not a refrigerant known here; expected a designation such as R290.</source>
      <translation>“{shown}” no es un refrigerante conocido aquí; se esperaba una designación como R290.</translation>
    </message>
    <message>
      <source>“{source}” is not a source in the bibliography.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>“{step}” is not one of {steps}.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>“{step}” stands a second time; say in “again” why it was repeated.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>“{step}” was not done before in this job.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>“{text}” is below a perfect vacuum where the air has {air_pressure}; check the sign and the unit.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>“{twice}” stands twice.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>“{typed}” may be gauge or absolute; write {gauge} as read on a gauge, or {absolute}.</source>
      <translation>“{typed}” puede ser manométrica o absoluta; escriba {gauge} como se lee en el manómetro, o {absolute}.</translation>
    </message>
    <message>
      <source>“{unit}” is not a unit known here.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>“{unit}” is not a unit of {dimension}.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>“{value}” is not a day of the year such as 03-01.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>“{value}” is not one of {allowed}.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>“{when}” is not one of {known}.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>‹ &amp;Records</source>
      <translation>‹ &amp;Registros</translation>
    </message>
    <message>
      <source>‹ Jobs</source>
      <translation>‹ Trabajos</translation>
    </message>
    <message>
      <source>‹ Stock</source>
      <translation>‹ Existencias</translation>
    </message>
    <message>
      <source>▲ nameplate</source>
      <translation>▲ placa</translation>
    </message>
    <message>
      <source>▲ stop here</source>
      <translation>▲ parar aquí</translation>
    </message>
    <message>
      <source>◆ off today's by more than {sure}, or {surfaces} where taken from surfaces: our own band; off the maker's by more than the maker's own tolerance where there is one. Other pressures and single temperatures follow weather and load and are not marked.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <source>○  less what temperature explains     ×  as read
band  what temperature and gauge leave in doubt (k = 2)</source>
      <translation>○  sin lo que explica la temperatura     ×  tal como se leyó
banda  lo que temperatura y manómetro dejan en duda (k = 2)</translation>
    </message>
  </context>
</TS>
