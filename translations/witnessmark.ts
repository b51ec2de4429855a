<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<TS version="2.1">
<context>
    <name>BackupWords</name>
    <message>
        <source>No backups are made of this shop. Please ask a manager to set them up.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The folder for backups can&apos;t be reached. Please ask a manager to look.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>There is no backup yet. Please ask a manager to look.</source>
        <translation type="unfinished"></translation>
    </message>
    <message numerus="yes">
        <source>The last good backup is %n days old, of %1. Please ask a manager to look.</source>
        <translation type="unfinished">
            <numerusform></numerusform>
        </translation>
    </message>
    <message>
        <source>%1, %2</source>
        <comment>file, size</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>only by hand</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>each day</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>each week</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>An entry that has been taken out since.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>BankProblems</name>
    <message>
        <source>The picture %1 is missing</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Put it beside the file and open that again</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>CalendarWords</name>
    <message>
        <source>%1: %2 with %3</source>
        <comment>what for, member, assessor</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>-called-off</source>
        <comment>the end of a file&apos;s name</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>file</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>It can&apos;t be opened</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Choose a calendar that is there</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1: %2</source>
        <comment>where in the file; what is wrong, and what to do</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>And %1 mistakes more.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Nothing was taken in.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>One-on-ones of %1 as a calendar</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Write the file</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The file is iCalendar, which other calendars take in. Taken in again later it brings what was moved up to date; what was called off is marked so, and stands in a second file for calendars that take it out by that. Both have names in them: give them to nobody whom they do not concern.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Folder</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Choose the folder</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A folder for the file</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>folder</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>There is no such folder</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Choose one that is there</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Written: %1.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source> and </source>
        <comment>between files</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>When %1 is busy</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Take it in</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Choose an iCalendar file that %1 saved. The times at which they are busy are kept, for %2 days from now, in place of those taken in before; with what they are busy is not.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>File</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Choose the file</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A calendar</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Calendars (*.ics)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Busy times of %1 taken in: %2.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>One-on-one, %1.</source>
        <comment>purpose</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Witnessed by two assessors: %1.</source>
        <comment>their names</comment>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>Checkouts</name>
    <message>
        <source>%1 and %2</source>
        <comment>the last two of a list</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>passed</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>failed</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>stopped</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Suggested: passed.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Suggested: failed. Critical and not shown: line %1.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Not finished.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Line %1 is still to be marked.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 lines are still to be marked.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Line %1 must be shown again, unasked, before a pass.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Line %1 was not shown: note it, or restrict.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Nothing changes: %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What was marked and not signed at this station could not be read</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Mark it again; the file was kept for whoever wants to look into it</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The marks are not kept if the program ends now: %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Sign before you leave, or make room on the disk</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Line %1 is still to be measured.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Lines %1 are still to be measured.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 (line %2)</source>
        <comment>a line&apos;s words, its number</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>It was stopped, and goes on another time.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Not this time, and there is a next one.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Shown well: %1 of %2 lines.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Worth practising, with somebody beside: %1.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>; </source>
        <comment>between lines of a sheet</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Member</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Unit</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Day and time</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Assessor</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>shown</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>when asked</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>not shown</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>again</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>measured: __________   by marks of: __________</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Result, put a ring around one: %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What stays open, aids used; never a medical reason</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Member: I was shown this machine&apos;s cautions</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Assessor: this is what I watched</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Mark between cuts, never while stock is moving. A critical line (heavy) that was shown only when asked is shown again, unasked, before a pass. Nothing counts before a manager has entered this paper, by its number.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Run sheet: %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 · sheet revision %2 · paper number %3</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Paper number %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Ledger %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Run sheet %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>In hand since %1, marked by %2; every mark is in the shop&apos;s store.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>In hand since %1, marked last on %2 by %3; every mark is in the shop&apos;s store.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Put by on %1.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Put by on %1: %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>was signed on %1 by %2: %3</source>
        <comment>a day, an assessor, a result</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>line %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the second time %1</source>
        <comment>a mark</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>measured “%1”</source>
        <comment>as it was typed</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>, </source>
        <comment>between what is said of a line</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The run sheet of %1, %2</source>
        <comment>a person, a unit</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>was struck out on %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>gave way to another that was begun on %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message numerus="yes">
        <source>was left for more than %n days, so what was shown is shown again, on a new one</source>
        <translation type="unfinished">
            <numerusform></numerusform>
        </translation>
    </message>
    <message>
        <source>Marked here and not sent: %1.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Typed here and not sent: %1.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Second assessor</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Second assessor: I watched it too, and say the same</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>DeskWords</name>
    <message>
        <source>The shop has no unit of this machine.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Not now: %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What this rests on</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>To work with a supervisor</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>To work without a supervisor</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 %2, %3–%4, %5, with %6</source>
        <comment>weekday, day, from, to, unit, assessor</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Booked: %1.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No time fits in the next three weeks: try the waiting list.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>First that fits: %1.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Book %1 %2</source>
        <comment>weekday, time</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>As known on %1.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Printed for %1.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No printer is set up; written to %1.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>no end</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1: %2</source>
        <comment>a day, a standing</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>paused</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>More steps follow: print this for all of them.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Ledger %1.</source>
        <comment>a code of letters and figures</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Answer for %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>At work on %1 since %2.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Supervising %3 on %1 since %2.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 is at %2 since %3: enter first that they have left it.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 has it booked with %2 from %3 to %4. Ask them first.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1, visitor, with %2, since %3; uses nothing</source>
        <comment>name, host, time</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>. %1 has left: nobody stays with them</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1: %2</source>
        <comment>machine and unit, what is said of its lock</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Held, and not for certain: %1.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>It is for certain</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 is in a one-on-one with %2 on %3; it ends at %4. Where it has ended before its time, cancel it in the Diary.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 is noted as gone since %2: enter when the machine was left.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The check-out of %1 is not countersigned yet; %2 can still do so, on Check-outs.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>Diary</name>
    <message>
        <source>%1 or %2</source>
        <comment>the last two of a list</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The shop has no unit of this machine. A manager can add one on Machines.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Nobody else is able to assess %1 now. A manager can appoint somebody who works on it without a supervisor.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 is not ready for a check-out on %2 in these days: the Desk says what is missing.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Nobody with hours in the diary is able to assess it.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Nobody who assesses has hours in these days.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Every unit is out of service.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 is booked throughout.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Every assessor is booked throughout.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Every unit is booked throughout.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>what %1 still needs for a check-out</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>somebody able to assess it among those who are in</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>more hours of %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>a unit back in service</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>moving another booking of %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>moving another booking on this machine</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 units free</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>unit free</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>fits: %1 ready, %2 able and in %3, %4</source>
        <comment>member, assessor, hours, units</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Member, assessor and unit are never free at the same time.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>More than one thing stands in the way; look at later days, or put %1 on the waiting list.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What would help: %1.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Nobody who assesses may be booked with %1 in these days: somebody under 18 is booked only while two adults are in, and in some tiers who taught somebody does not check them out.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Every assessor has as much as they take on.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>another adult in the building, or another assessor than who taught %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>more that %1 takes on</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>somebody else who is able to</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Nobody else may supervise %1 now. A manager can appoint somebody who works on it without a supervisor.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 may not yet work on %2 with a supervisor in these days: the Desk says what is missing.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Nobody with hours in the diary is able to supervise it.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Nobody who supervises it has hours in these days.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>what %1 still needs to work with a supervisor</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>somebody able to supervise it among those who are in</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A check-out on %1 is witnessed by two assessors at once, and in these days no two are in, free and able to assess it at the same time.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>a second assessor at a time at which there is one: more hours of %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 and %2</source>
        <comment>two assessors</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 is not ready for a check-out on %2 in these days; missing: %3.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 may not yet work on %2 with a supervisor in these days; missing: %3.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>Effects</name>
    <message>
        <source>%1 machines</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 (%2)</source>
        <comment>a person, a machine</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>, </source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 and %2 more</source>
        <comment>people</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Standings that changed: %1.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>FitEveryone</name>
    <message>
        <source>%1 and %2 more</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Every time that fits is taken by somebody who comes before: %1.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>So that more people are served altogether, these have a time instead, who have waited less: %1.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>At other times an assessor would give more than they take on.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>There is no better proposal.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Nobody more can be served; whether on fewer than these days was not settled, on fewer than %1 is impossible.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Nobody more can be served; whether on fewer days was not settled.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The best found in the time given; no more than %1 can be served.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The best found so far; there may be a better one.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1, %2: %3 with %4 on %5</source>
        <comment>day; times; member; assessor; machine</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Nobody waits.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 of %2 who wait are served.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Something that it needs lapses on %1, before the first time there is.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The best found in the time given: %1 of those who come first are served, no more than %2 can be.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Nobody more can be served. They have waited %1 days together; those who waited %2 might be served instead, and nobody longer.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Nobody more can be served; longer waits might be.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Nobody more can be served; between one-on-ones assessors wait %1 minutes, and fewer than %2 are impossible.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Nobody more can be served; shorter waits for assessors may be possible.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>HelpWords</name>
    <message>
        <source>Hours every %1 of one more able to assess %2 would serve 1 person.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Hours every %1 of one more able to assess %2 would serve %3 people.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>HoursWords</name>
    <message>
        <source>%1–%2</source>
        <comment>weekdays</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 %2</source>
        <comment>weekdays, hours</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>hours</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>“%1” are no hours</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Type them as 12:00-14:00, 17:30-20:00; a day ends at 24</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Some of these hours overlap</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Type each hour once</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>“%1” is no whole number</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Type one, or leave it empty</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>“%1” is no length of time</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Type minutes, or hours as 1:30</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>HtmlPaper</name>
    <message>
        <source>The sheet could not be written to %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>See whether that folder can be written to</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The printer did not take the paper</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>See whether it is on</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>LessonFiles</name>
    <message>
        <source>The file %1 cannot be read: %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Put it beside the page, or take it out of the page</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The file %1 is too big: %2 KB, and %3 KB at most are kept</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Make it smaller, or put it on a web page and link to that</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No lesson shows this: %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Name a picture (png, jpg, svg), a PDF or a video that lies beside the page, or a web address with https</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>line %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The page is not UTF-8 text</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Save it as UTF-8</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The page is empty</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Write it first</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>LessonNeeds</name>
    <message>
        <source>%1, before working with a supervisor</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1, before working without a supervisor</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Tier %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>At once: %1.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Through %1: %2.</source>
        <comment>a last day, people</comment>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>LookWords</name>
    <message>
        <source>Fine: nothing was found that should not be there.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>NOT FINE: something is not as it was entered.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No record. The root now: %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Records: %1, the last entered %2. The root now: %3</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Check-outs with a signature that holds: %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>, and %1 that were verified before and lie under a root that holds</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>. Without a signature: %1 (%2 from paper, %3 imported, %4 entered here).</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 holds: record 1 is as when it was written down</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 holds: records 1 to %2 are as when it was written down</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>, %1, signed by the key %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 does not hold: %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1: the end was cut off: there are %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>; should be: %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>And %1 more of them.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Not known without a root from outside the file: whether all of it was made anew by somebody who can write the file, or its end cut off. A root stands at the foot of every printed paper.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Not known without a later root: whether what came after record %1 was made anew or cut off.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>Measures</name>
    <message>
        <source>thickness</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>width</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>length</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>depth</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>angle</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>gap under the square</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>gap under the straightedge</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>about %1</source>
        <comment>a length</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 to %2</source>
        <comment>the ends of a tolerance</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 (%2)</source>
        <comment>a reading, and in another unit</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 along %2</source>
        <comment>a gap allowed, and the length that it is looked for along</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1, at most %2</source>
        <comment>what is measured, its tolerance</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1, %2</source>
        <comment>what is measured, its tolerance</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Marks of %1 are too coarse to tell %2: use a finer instrument</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 is within %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 is under %2, by %3</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 is over %2, by %3</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1; so near the edge, marks of %2 cannot tell for sure</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>Moment</name>
    <message>
        <source>day</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>“%1” is no day</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Type it as 26 November, or leave it empty</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>time</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>It is not said at what time</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Type it as 17:30</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>“%1” is no time of day</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>Pages</name>
    <message>
        <source>Desk</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Diary</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Check-outs</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>People</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Machines</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Rosters</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Journal</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Lessons</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Backups</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Questions</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Figures</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Hours</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Computers</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Sheets</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>Passes</name>
    <message>
        <source>%1: %2</source>
        <comment>a field, what is wrong</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>It needs a width and a depth, with a colon between</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Type them as 6 in: 1/8 in; 12 in: 1/16 in</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>That is no number of marks</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Count the marks around the wheel</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What it is</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>planer: set by a wheel</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>jointer: set by its scale</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Deepest pass up to each width</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>6 in: 1/8 in; 12 in: 1/16 in</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Shortest stock</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Thinnest left</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Light pass</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Scale marks apart</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Scale is within</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Wheel: one turn</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Wheel: divisions</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What is new, and where the manual says it</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>about %1</source>
        <comment>a number</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 turns</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 turn</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Set by the scale</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Find the high spot</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Take off</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Last, light</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>before and after</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>before</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>after</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 up to %2 wide</source>
        <comment>a depth, a width</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Arithmetic: %1 to come off at %2 a pass at most is %3; no plan has fewer passes.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Deepest pass</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>missing: no plan is made without it</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 at most</source>
        <comment>a depth</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Scale</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>marks %1 apart, within %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Wheel</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 a turn, %2 divisions</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>As the maker&apos;s manual says: where this card and the manual differ, the manual counts, and the card is to be mended.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 of %2</source>
        <comment>divisions of a wheel</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 (%2)</source>
        <comment>turns and divisions, in turns alone</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source> and </source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>look at it after</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Board: %1 long, %2 wide, %3 at the thickest place, by a caliper to %4.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Passes: %1 at most, %2 where the first cuts as much as it can.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The deepest pass, %1, is %2 of the wheel, which moves %3 a turn.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Board: %1 long, %2 wide, %3 thick.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Passes: %1 where each takes what the scale says; stop as soon as it is flat, and plan anew from what is still hollow.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>One face flat and down, no metal, no loose knots; stand to the side, hands away from the rollers, let it feed.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Come up to each setting from the side that the maker&apos;s manual says. Measure only when the board is out.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Crown up, grain down the cut, guard over all of the cutterhead that is not in use.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Push blocks: no hand over the cutterhead, none behind the board.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Stop, isolate and wait for it to come to rest before reaching in.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>This is arithmetic on the card&apos;s figures. Local codes, the maker&apos;s manual and a qualified instructor come first.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>How</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Set to</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Wheel, divisions</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Cuts at most</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Measure</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1: %2 to %3</source>
        <comment>a machine, two sizes</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Length</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Width</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Thickest place</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Thicker elsewhere by</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Final thickness</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Caliper reads to</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Thickness</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Hollow, under a straightedge</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>a face</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>an edge</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>hollow by %1</source>
        <comment>a length</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1: %2, %3</source>
        <comment>a machine, a face or an edge, how hollow</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Narrowest left by an edge</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>as the thinnest</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>by what is measured</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Those that find the high spot end as soon as one has cut: measure it there and type what is measured, since all that comes after is set by that.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Measured: %1, as asked. Nothing more comes off.</source>
        <comment>a size</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Measured: %1, thinner than the %2 that was asked for. Nothing more comes off.</source>
        <comment>two sizes</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Measured where it was cut: %1, so %2 is still to come off.</source>
        <comment>two sizes</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Turn the wheel on from where it stood for that cut; the scale says nothing any more.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Passes left: %1. Measure again after any of them, and type that: the rest goes by it.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Measured where it was cut</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1, measured %2</source>
        <comment>a plan, a size</comment>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>QObject</name>
    <message>
        <source>%1, %2</source>
        <comment>a machine and its unit</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1–%2</source>
        <comment>from a time to a time</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 and %2</source>
        <comment>two assessors</comment>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>Quiz</name>
    <message>
        <source>This computer&apos;s clock shows earlier than at the last answer</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Ask the desk to put the clock right; then the quiz goes on by itself</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Somebody takes a quiz in another window of this computer</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Go on there, or wait for its end</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What was answered at this station could not be read</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Identify yourself again: the same questions come once more, with the time that is left. The file was kept</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The answers are not kept if the program ends now: %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Go on to the end, and tell the desk to make room on the disk</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>left open</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>none of them</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the place that is marked</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>(right: %1)</source>
        <comment>a number</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>(right)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>right</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>left open, not right</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>not right</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1, a critical question</source>
        <comment>right or not</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Right: %1, within %2.</source>
        <comment>a measure, a tolerance</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Answered: %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Seconds on it: %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>an interpreter</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>read aloud</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>large type</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>, </source>
        <comment>between helps</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 of %2 right</source>
        <comment>how many</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1, 1 critical question missed</source>
        <comment>marks</comment>
        <translation type="unfinished"></translation>
    </message>
    <message numerus="yes">
        <source>%1, %n critical questions missed</source>
        <comment>marks</comment>
        <translation type="unfinished">
            <numerusform></numerusform>
        </translation>
    </message>
    <message>
        <source>Steps to put in order</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Choices</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 of %2: %3</source>
        <comment>a row, of how many, its words</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1, chosen</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1, picked up</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Your answer, a number with its unit</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Type a number with its unit, as 1/8 in, 3.2 mm or 90 degrees.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Read as %1.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>This can&apos;t be read yet. %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>How it stands</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Questions</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Pass mark</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 % of them right, and every critical one among these</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Time</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>as long as it takes</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>1 hour</source>
        <translation type="unfinished"></translation>
    </message>
    <message numerus="yes">
        <source>%n hours</source>
        <translation type="unfinished">
            <numerusform></numerusform>
        </translation>
    </message>
    <message>
        <source>Attempts</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 that are not passed within %2</source>
        <comment>how many, how long</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Waiting time</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 after one that is not passed</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Attempts left</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>any number</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No questions have been issued for this quiz yet. Please ask the desk.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Revision %1 of this quiz is needed, and its questions have not been issued yet. Please ask the desk.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>First comes %1. Once that is entered the quiz can be tried, from %2 on.</source>
        <comment>a lesson, a day</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No attempt is left for now. The next one counts from %1 on.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The last attempt was not passed and the waiting time is not over. The next one counts from %1 on.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>This quiz was begun on %1 at %2 and never handed in. Please go on at the computer where it was begun, or ask a manager to strike that out; then it can be tried, from today on.</source>
        <comment>day, time</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The offer can&apos;t be kept: %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Make room on the disk</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The picture: point at a place, or move the mark with the arrow keys</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The mark is %1 % across and %2 % down</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No time limit</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 s left</source>
        <comment>seconds</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 left</source>
        <comment>so many minutes</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Choose one.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Choose all that are right.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Drag each step to its place, or move it with Ctrl and an arrow key.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Point at it, or move the mark with the arrow keys.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 of %2 questions are open, %3 to come back to</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The file was kept. The quiz can be begun anew</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The quiz that was going on here has been struck out</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What was answered here does not fit the quiz any more</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No questions have been issued for this quiz</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Somebody else&apos;s quiz is not over at this station</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The rulebook asks for no such quiz</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No quiz is being taken here</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>This lesson is taught by staff. Please ask the desk.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The revision of this lesson that counts is taught by staff. Please ask the desk.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>QuizWords</name>
    <message>
        <source>This quiz was begun with another question bank</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Begin it anew</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>Reminder</name>
    <message>
        <source>You are shown how to work on %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>You practise on %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Your check-out is on %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>If you can&apos;t come, say so as soon as you can, so that somebody else can have the time.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>This time is held for you through %1, %2. Tell us by then that you will come.</source>
        <comment>a day, a time</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1,</source>
        <comment>a name, to begin a message</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1, %2, with %3, at %4.</source>
        <comment>day, times, assessor, shop</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Come in closed shoes and close sleeves, hair tied back, without gloves, rings or anything that hangs, and with eye and ear protection.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Reminders %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Reminders for %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Reminders for %1 are printed.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No printer is set up; written to %1.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 That stands through the next check-out that is passed.</source>
        <comment>what is restricted, as a sentence</comment>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>ServerShop</name>
    <message>
        <source>the server&apos;s name</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the shop&apos;s database</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>this computer&apos;s login</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>It is missing</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Ask whoever set the server up</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>This is no name of a computer</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Write it like server.shop.lan</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>There is no such file</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Without it anybody in the same network could pass for the server</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The server&apos;s address cannot be kept here</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Make room, or ask for the right to write to the folder</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The server&apos;s address cannot be read</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Ask for the right to read the file</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the file shop-root.crt</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Bring shop-root.crt from the server on a stick, and choose it</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>TroubleWords</name>
    <message>
        <source>no longer possible: %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>This booking is no longer possible: %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 will not be ready then: they are paused.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Send them to the manager, or move the booking.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 will not be ready then.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 will not be ready then; missing: %2.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Let them do it before, or move the booking.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>Words</name>
    <message>
        <source>1 minute</source>
        <translation type="unfinished"></translation>
    </message>
    <message numerus="yes">
        <source>%n minutes</source>
        <translation type="unfinished">
            <numerusform></numerusform>
        </translation>
    </message>
    <message>
        <source>1 session</source>
        <translation type="unfinished"></translation>
    </message>
    <message numerus="yes">
        <source>%n sessions</source>
        <translation type="unfinished">
            <numerusform></numerusform>
        </translation>
    </message>
    <message>
        <source>once</source>
        <translation type="unfinished"></translation>
    </message>
    <message numerus="yes">
        <source>%n times</source>
        <translation type="unfinished">
            <numerusform></numerusform>
        </translation>
    </message>
    <message>
        <source>1 day</source>
        <translation type="unfinished"></translation>
    </message>
    <message numerus="yes">
        <source>%n days</source>
        <translation type="unfinished">
            <numerusform></numerusform>
        </translation>
    </message>
    <message>
        <source>1 month</source>
        <translation type="unfinished"></translation>
    </message>
    <message numerus="yes">
        <source>%n months</source>
        <translation type="unfinished">
            <numerusform></numerusform>
        </translation>
    </message>
    <message>
        <source>1 calendar month</source>
        <translation type="unfinished"></translation>
    </message>
    <message numerus="yes">
        <source>%n calendar months</source>
        <translation type="unfinished">
            <numerusform></numerusform>
        </translation>
    </message>
    <message>
        <source>d MMMM</source>
        <comment>a date of this year</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>d MMMM yyyy</source>
        <comment>a date of another year</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>today, %1</source>
        <comment>a time of day</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>dddd d MMMM yyyy</source>
        <comment>a date in full</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>d MMM yyyy</source>
        <comment>a date in short</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1, %2</source>
        <comment>a machine and its mode</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the %1</source>
        <comment>a machine</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the %1 for %2</source>
        <comment>a machine and its mode</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>somebody unknown</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 %2</source>
        <comment>given name, family name</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>number %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1, %2</source>
        <comment>family name, given name</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1, %2</source>
        <comment>a machine and its unit</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>counts with no end</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>counts through %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>asked for again by an incident on %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>asked for again by a change of the machine on %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>last tried on %1, revision %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 % on %2, a critical question missed</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>not passed on %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>stopped on %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>last on %1, revision %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 so far</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source> in </source>
        <comment>minutes in sessions</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>nothing on file that shows it</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>under %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>not yet</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>nothing on file yet</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source> within %1</source>
        <comment>a period</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source> on %1</source>
        <comment>a machine</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>, revision %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Paper: %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Not for people under %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Lesson: %1%2</source>
        <comment>name, revision</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Quiz: %1%2, %3 % needed</source>
        <comment>name, revision, percentage</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Check-out: %1%2</source>
        <comment>name, revision</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Supervised practice%1: %2%3</source>
        <comment>where, how much, within what time</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Used%1 %2 within %3</source>
        <comment>where, how often, within what time</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1: %2</source>
        <comment>a machine, how</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Every machine of tier %1: %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>One machine of tier %1: %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message numerus="yes">
        <source>%n machines of tier %1: %2</source>
        <translation type="unfinished">
            <numerusform></numerusform>
        </translation>
    </message>
    <message>
        <source>All of these</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>One of these</source>
        <translation type="unfinished"></translation>
    </message>
    <message numerus="yes">
        <source>At least %n of these</source>
        <translation type="unfinished">
            <numerusform></numerusform>
        </translation>
    </message>
    <message>
        <source>counts through %1 for people who were here before</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>due now</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>, through %1</source>
        <comment>ends a phrase</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>, revision %1</source>
        <comment>ends a phrase</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>all of tier %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>all machines</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>quiz station</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>desk</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>instructor</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>manager</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1, %2</source>
        <comment>a day and a time</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A record that is not here.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Birth date of %1 entered.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 gave in a paper: %2%3.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 had the lesson: %2%3.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>, %1 critical missed</source>
        <comment>ends a phrase</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 took the quiz: %2%3, %4 of %5 right%6.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 passed the check-out: %2; assessed by %3.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 did not pass the check-out: %2; assessed by %3.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1&apos;s check-out was stopped: %2; assessed by %3.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 worked on %2 for %3 min, supervised by %4.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 used %2.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Incident of severity %1 on %2; %3 was operating.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Incident of severity %1 on %2; %3 was supervising.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Incident of severity %1 on %2; %3 was hurt.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Incident of severity %1 on %2; %3 saw it.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 paused on %2%3.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Pause ended: %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 appointed to assess %2 from the start%3.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 appointed to assess %2%3.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Appointment ended: %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 published%2.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 put out of service.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Padlock taken off: %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A change to %1.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 sits at the desk as %2.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 has no role at the desk any more.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Two entries of one person joined: %1 and %2.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 booked with %2 on %3, %4 to %5.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Booking cancelled (%1): %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Arrived: %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Came late: %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Did not come: %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 left.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 came in, on duty.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 came in.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 on the waiting list for %2.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Off the waiting list: %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Restriction: %1. %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Run sheet marked%1. %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>padlock</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>padlock %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Tag %1, %2, key with %3: %4.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>An attempt to reach who put the padlock on: %1. %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Unit entered: %1.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 is usually in on %2, %3 to %4.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Struck out (%1): %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Rulebook %1 published.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Birth date</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Paper</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Lesson</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Quiz</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Check-out</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Supervised work</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Use</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Incident</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Pause</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Appointment</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Revision</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Out of service</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Change</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Role</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Join</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Booking</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Attendance</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Presence</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Waiting list</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Unit</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Hours</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Struck out</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Rulebook</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>no role</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>one other person is present</source>
        <translation type="unfinished"></translation>
    </message>
    <message numerus="yes">
        <source>%n other people are present</source>
        <translation type="unfinished">
            <numerusform></numerusform>
        </translation>
    </message>
    <message>
        <source>one other person who may use it is present</source>
        <translation type="unfinished"></translation>
    </message>
    <message numerus="yes">
        <source>%n other people who may use it are present</source>
        <translation type="unfinished">
            <numerusform></numerusform>
        </translation>
    </message>
    <message>
        <source>one other qualified person is present</source>
        <translation type="unfinished"></translation>
    </message>
    <message numerus="yes">
        <source>%n other qualified people are present</source>
        <translation type="unfinished">
            <numerusform></numerusform>
        </translation>
    </message>
    <message>
        <source>staff are in</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>, while %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>, </source>
        <comment>between parts of a list</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 is paused on %2: please speak to the manager.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 is paused on %2 through %3: please speak to the manager.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>only with a supervisor</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>without a supervisor</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>no</source>
        <comment>may not use it, in a narrow cell</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>supervised</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>unsupervised</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 may not yet use %2.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>, through %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 may use %2 %3%4%5.</source>
        <comment>who, which machine, how, through when, while what</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Restricted: %1.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>; </source>
        <comment>between restrictions</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 may not use it yet.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Too few others are present.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The machine is out of service.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>This records permission; it does not make a machine safe. Local codes, the maker&apos;s manual and a qualified instructor come first.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1&apos;s standing on %2</source>
        <comment>a person, a machine</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>“%1”</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 falls from %2 to %3 on %4.</source>
        <comment>whose standing, a standing, a standing, a day</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Were it struck out, %1 would fall from %2 to %3.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Were it struck out, %1 would rise from %2 to %3.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Were it in force, %1 would fall from %2 to %3.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Were it in force, %1 would rise from %2 to %3.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Nobody&apos;s standing would change.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 is another from %2 through %3.</source>
        <comment>whose standing, a day, a day</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 is another from %2 on, for a time.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 is another from %2 on.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 is another for a time, through %2.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 is another for a time.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 becomes another.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Nobody&apos;s standing changes.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>from %1 on %2</source>
        <comment>a day, a standing</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1.</source>
        <comment>a sentence</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>; </source>
        <comment>between standings</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>today</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>counts for people who were here before</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>due since %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1, still counts through %2</source>
        <comment>due since when, a day</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>due by %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1, counts through %2</source>
        <comment>due by when, a day</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>To be renewed: %1, %2.</source>
        <comment>a requirement, due since when</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Next to be renewed: %1, %2.</source>
        <comment>a requirement, due by when</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 and %2</source>
        <comment>the last two of a list</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 or %2</source>
        <comment>the last two of a list</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1, %2</source>
        <comment>what there is, how long</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>holds from %1</source>
        <comment>a day</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 % on %2</source>
        <comment>percentage, day</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>passed on %1 with %2</source>
        <comment>day, assessor</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>taken on %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>on %1</source>
        <comment>a day</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>does not count</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>missing since %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>last passed on %1, revision %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>last passed on %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>last on %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>since %1</source>
        <comment>a day</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>At least one of these</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the paper “%1”</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>an age of %1 or more</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the lesson “%1”%2</source>
        <comment>name, revision</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the quiz “%1”%2, with %3 % or more</source>
        <comment>name, revision, percentage</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the check-out “%1”%2</source>
        <comment>name, revision</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>supervised practice%1, %2%3</source>
        <comment>where, how much, within what time</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>use%1 %2 within %3</source>
        <comment>where, how often, within what time</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>leave to use %1 %2</source>
        <comment>a machine, how</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>leave to use every machine of tier %1 %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>leave to use one machine of tier %1 %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message numerus="yes">
        <source>leave to use %n machines of tier %1 %2</source>
        <translation type="unfinished">
            <numerusform></numerusform>
        </translation>
    </message>
    <message>
        <source>all of these</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>one of these</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>at least one of these</source>
        <translation type="unfinished"></translation>
    </message>
    <message numerus="yes">
        <source>at least %n of these</source>
        <translation type="unfinished">
            <numerusform></numerusform>
        </translation>
    </message>
    <message>
        <source>%1; %2</source>
        <comment>what there is, when it is due</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Paused since %1, with no end set.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Paused since %1, through %2.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Reason: %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A manager can end a pause.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>There may be a way with fewer steps: that was not worked out to the end.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Today</source>
        <comment>from today on</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Later</source>
        <comment>on a day that is shown to nobody</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>From %1</source>
        <comment>a day</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1, %2</source>
        <comment>a step, how often</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>There is no way from here for %1 to use %2 %3: a pause with no end is in force, or nobody is able to assess or to supervise what is missing. Please ask a manager.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Nothing more is needed for that.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Nothing is to be done: the day for it is still to come.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Nothing is to be done but wait: from %1 on %2 may use %3 %4.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>With that, %1 may use %2 %3 today.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>With that, %1 may use %2 %3, though not before a day still to come.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>With that, %1 may use %2 %3 from %4 on at the earliest.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1: %2.</source>
        <comment>from when, which steps</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>; then </source>
        <comment>between steps</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>whatever the standing</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>at least with a supervisor</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>That has been so since %1.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>From %1 on not at all.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>From %1 on %2.</source>
        <comment>a day, a standing</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The machine is out of service since %1.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The machine is out of service since %1, put by %2.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Tag %1, key with %2.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A manager can take the padlock off.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 can take the padlock off; a manager can once it was tried to reach %1.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Too few others are present: it may be used while %1.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Nobody is here and free who can supervise.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Nobody else in the shop could, either.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>somebody else</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 could.</source>
        <comment>people</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 may start it now.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Here now who can supervise: %1.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the quiz “%1”%2</source>
        <comment>name, revision</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 of practice on %2, for instance with %3</source>
        <comment>minutes, a machine, a supervisor</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>use of %1 without a supervisor</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the check-out “%1”%2, for instance with %3</source>
        <comment>name, revision, assessor</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 (%2)</source>
        <comment>a requirement, what there is of it</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1, which holds</source>
        <comment>a requirement</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1, for which are needed: %2</source>
        <comment>a check-out, requirements</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1: %2</source>
        <comment>all of these, requirements</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>; </source>
        <comment>between requirements</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No rulebook is in force, so nobody may use a machine.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The rulebook in force does not have %1.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Nothing is asked for it.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The lowest of these counts: %1.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>There: %1.</source>
        <comment>a requirement</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>To be renewed: %1.</source>
        <comment>a requirement</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Still needed: %1.</source>
        <comment>a requirement</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Details of %1 entered.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 has a new PIN.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Details of %1 erased.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Details</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>PIN</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>person %1</source>
        <comment>a number</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 signed: %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 named %2 as close to them.</source>
        <translation type="unfinished"></translation>
    </message>
    <message numerus="yes">
        <source>Printed: %1, %n page(s), text %2.</source>
        <translation type="unfinished">
            <numerusform></numerusform>
        </translation>
    </message>
    <message>
        <source>The computer&apos;s clock confirmed at %1.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Closeness</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Paper printed</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Clock</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>midnight</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Question bank</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Run sheet</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Limits card</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Text erased in: %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 issued: %2%3.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 began the quiz %2%3.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 handed in a quiz; the answers have been erased.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 handed in a quiz.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Text erased</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>text erased</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 went through the lesson at the quiz station: %2%3.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 had the lesson: %2%3, attested by %4.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>line %1, typed “%2”: %3, by marks of %4</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 Measured: %2.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>import</source>
        <comment>who entered it</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>: %1</source>
        <comment>a reason at a sentence&apos;s end</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1–%2</source>
        <comment>from a time to a time</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>, </source>
        <comment>between hours</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>an hour</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 hours</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 minutes</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 through %2</source>
        <comment>days</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>at most %1 a day</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>at most %1 on end, then a break of %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>as much as there is</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The shop is open on %1, %2.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>On duty on %1, %2: %3.</source>
        <comment>weekday, hours, how many adults</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>one adult</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 adults</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 is away, %2%3.</source>
        <comment>who, days, why</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 is in on other hours, %2: %4%3.</source>
        <comment>who, days, why, hours</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The shop is closed, %1%2.</source>
        <comment>days, why</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The shop has other hours, %1: %3%2.</source>
        <comment>days, why, hours</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Nobody is on duty, %1%2.</source>
        <comment>days, why</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>On duty at other hours, %1: %3%2.</source>
        <comment>days, why, hours</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 has a break on %2, %3.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 takes on %2.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A one-on-one on %1 lasts %2.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Nobody is to wait longer than %1 days.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A time is held for %1 hours.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Whoever has not come %1 times within %2 days is booked again after %3 days.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The shop books without rules of its own.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Maintenance of %1, %2 to %3%4.</source>
        <comment>machine, from, to, why</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 is busy at no time that is known.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Busy times of %1 taken from a calendar, %2 to %3: %4.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Held through %1.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Instead of: %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>For certain now: %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Maintenance</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>was working</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>was supervising</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>was hurt</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>saw it</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A near miss at %1: %2</source>
        <comment>machine, what happened</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>At %1, severity %2: %3</source>
        <comment>machine, number, what happened</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>; somebody not named %1</source>
        <comment>was hurt</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 started %2.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 started %2, supervised by %3.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Left again: %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>restricted: %1</source>
        <comment>in a cell</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 marked the run sheet apart%2. %3</source>
        <comment>who, revision, the check-out</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>no mark</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>shown</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>shown when asked</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>not shown</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 On paper, number %2.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 took the run sheet for %2 in hand%3.</source>
        <comment>who, on what, revision</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the second time %1</source>
        <comment>a mark</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>measured “%1”</source>
        <comment>as it was typed</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Line %1: %2. %3</source>
        <comment>its marks, the sheet</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Put by, to go on another day: %1</source>
        <comment>the sheet</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 Said then: %2.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 countersigned with their PIN: %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 countersigned with their card: %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 countersigned on paper: %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>no padlock noted</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>without a number</source>
        <comment>a tag</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>not known: from the shop&apos;s older records</source>
        <comment>who put a padlock on</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>nobody noted</source>
        <comment>who holds a key</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>who put it on is not known</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>put on by %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What was changed: %1, %2</source>
        <comment>the kind of change, what was done</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 (%2)</source>
        <comment>what was changed, a unit</comment>
        <translation type="unfinished"></translation>
    </message>
    <message numerus="yes">
        <source>%1 given to a group of %n, by %2.</source>
        <comment>a lesson, who instructed</comment>
        <translation type="unfinished">
            <numerusform></numerusform>
        </translation>
    </message>
    <message>
        <source>A visitor for the day: %1, with %2; paper signed: %3.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Left: %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Put on by %1.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Visitor</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>another cutterhead, blade or cutter</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>another guard</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>controls or switches</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>moved, or set up anew</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>a repair</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>something else</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The computer %1 is for: %2.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Computer</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>everything</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>front desk</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>tablet at the machines</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>office</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>All that can be entered in the shop is taken here.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>People, papers, bookings, who is here and what happened are taken here, and quizzes. Check-outs are signed at the machines; what the shop goes by is the office&apos;s.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Check-outs are marked and signed here, and machines started and left, put out of service or changed. People&apos;s details and papers are the front desk&apos;s.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Members go through lessons and take quizzes here, and nothing else.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What the shop goes by is entered here: rulebook, roles, appointments, hours, lessons and questions; and what the front desk takes, but quizzes.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No number to call in an emergency any more.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>none</source>
        <comment>no number to call</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>To call in an emergency: %1.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 To say where the shop is: %2.</source>
        <comment>whom to call first</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Whom to call for %1 was shown while nobody sat there.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Emergency</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Second assessor: %1.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 signed it as the second assessor: %2</source>
        <comment>who, the check-out</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>tag %1, %2, key with %3</source>
        <comment>tag, padlock, who holds the key</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>tag %1, %2</source>
        <comment>tag, padlock</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>out of service since %1, %2; %3: %4</source>
        <comment>day, who put it on, its tag and padlock, why</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Worked on %1, which is used as before: %2, %3</source>
        <comment>machine, kind of change, what was done</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Tag %1, %2: %3.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Tag %1.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No staff are in: somebody else on duty has to come in first.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 A blank run sheet with the number %2%3.</source>
        <comment>what was printed, revision</comment>
        <translation type="unfinished"></translation>
    </message>
    <message numerus="yes">
        <source>%n more</source>
        <comment>things that are missing</comment>
        <translation type="unfinished">
            <numerusform></numerusform>
        </translation>
    </message>
</context>
<context>
    <name>wm::app::AgreedWords</name>
    <message>
        <source>All gave one and the same mark each time. Chance would do that too, so it tells nothing of how they judge.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Nothing was marked by more than one.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No number can be worked out of these marks.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>They agree no better than chance</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>They agree slightly beyond chance</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>They agree fairly beyond chance</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>They agree moderately beyond chance</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>They agree substantially beyond chance</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>They agree almost perfectly</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>They may agree no better than chance</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 (kappa %2, and no interval can be worked out).</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 (kappa %2; %3 to %4).</source>
        <comment>in words, a number, an interval</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Marked alike: %1 of %2.</source>
        <comment>how many, of how many</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>That is too few to tell agreement from chance: a number is given from %1 on.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1, sheet revision %2. Performances: %3. Assessors of each: %4.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Line %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1: %2</source>
        <comment>a line&apos;s number, its words</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No performance has been marked by two assessors here, so there is nothing to compare: how far assessors agree beyond chance can be told once a second one marks a check-out apart.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Kappa: 1 is perfect agreement, 0 what chance would make by itself. Of two assessors it is Cohen&apos;s, in which a mark next to the other&apos;s counts as half; of more it is Fleiss&apos;. Behind it stands its 95 % interval.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Lines of one performance hang together, so the interval of a whole sheet is narrower than it should be. Where nearly everything is marked shown, kappa is low though they hardly differ: look at how many were marked alike too.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>It tells of the sheet and of how assessors read it, not of one of them: talk a line through that they mark apart from each other, before anybody is blamed.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>wm::app::AnswerPanel</name>
    <message>
        <source>Show the answer</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Another time…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Waiting list</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Take a paper</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Attest a lesson</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Print this</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Came in</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Blank this</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Has left</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Take the paper</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Attest the lesson</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Put on the waiting list</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Booked %1: %2.</source>
        <comment>who, when</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 is on the waiting list for %2.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 has left.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 is here.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Enter the quiz from paper</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Paper quiz</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Start the quiz at the station</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Starts the machine…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Has left the machine…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Stop waiting</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 comes for certain.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 is off the waiting list for %2.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1: %2</source>
        <comment>who, machine</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Still noted as at a machine with them: %1. Enter when it was left, no later than now: “%2”.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>; </source>
        <comment>between machines</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 is here, off duty.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 is here, on duty.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Past session…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Off duty</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>On duty</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>wm::app::AsSatView</name>
    <message>
        <source>Language shown</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Back</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1: %2%3, as sat</source>
        <comment>who, which quiz, revision</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1, %2 to %3.</source>
        <comment>day, from, to</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1.</source>
        <comment>marks</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Sat in: %1.</source>
        <comment>a language</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>With help: %1.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>wm::app::Backups</name>
    <message>
        <source>folder</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No folder for backups has been chosen yet</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Set the backups up first</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>wm::app::BackupsPage</name>
    <message>
        <source>day or file</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Made</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>File</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Size</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Entries</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1, %2</source>
        <comment>day, time</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Backups: %1, in %2.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No backups are made yet</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No backup here</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What can be done</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A backup is being made.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Back up now</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Put this one back</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Backup of %1, %2</source>
        <comment>day, time</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>When it was made it was read back from the disk and found equal to the shop.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>How they are made</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Folder</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>By itself</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The desk is told</source>
        <translation type="unfinished"></translation>
    </message>
    <message numerus="yes">
        <source>after %n days without one</source>
        <translation type="unfinished">
            <numerusform></numerusform>
        </translation>
    </message>
    <message>
        <source>Kept</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the last of 7 days, 5 weeks and 12 months</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A backup is a copy of the whole shop in a folder of your choice, checked when it is made.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Set up</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Change this</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A manager sets this up.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Backup made, read back and equal to the shop: %1.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>How backups are made</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Keep this</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Choose the folder</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A folder for backups</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>By itself, while the program is open</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Days without one after which the desk is told</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Best is another disk, in another room: where the fire is not. A backup holds everything that the shop knows of people; keep it as you keep their papers.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Backups go to %1 from now on.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>folder</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>There is no such folder</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Choose one that is there</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Nothing can be written into this folder</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Choose another, or ask for the right to write to it</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>days</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>These days are fewer than lie between two backups, or no number</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Type a number of days greater than that, up to 366</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Backups</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>wm::app::BankChangeWords</name>
    <message>
        <source>New: %1.</source>
        <comment>questions</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Changed: %1.</source>
        <comment>questions</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No longer asked: %1.</source>
        <comment>questions</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Another share passes.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The time is another one.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Papers are drawn otherwise.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>It is worded in other languages.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Nothing has changed.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Nobody&apos;s standing would change: nobody has to sit it again.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Whoever has not sat it again by then falls back:</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>And on %1 days more.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>wm::app::BankEditor</name>
    <message>
        <source>Back to the banks</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The bank&apos;s text</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The question as a member sees it</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A bank of this name has not been issued before.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Put the cursor into a question, and it is shown here as a member sees it.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>wm::app::BankProblems</name>
    <message>
        <source>The question %1 has changed and keeps its revision</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Write revision: %1 under it, so that answers to the two are told apart</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>wm::app::BanksPage</name>
    <message>
        <source>a quiz</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Name</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Revision</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Counts</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Questions</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Revisions: %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Question banks</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Question banks show which answers are right. They open for instructors and managers.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No question bank has been issued yet</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>None of that name</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>From a file</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Open a bank&apos;s text</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Revision %1, issued on %2.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>On a paper</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 questions</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Passes with</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 % right, and no critical question wrong</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Time</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 minutes</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>as long as it takes</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Languages</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>, </source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What can be done</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Edit it into the next revision</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Look through it</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Save as a file</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What is on a paper</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 of %2, critical ones always</source>
        <comment>questions of a topic: on a paper, in the bank</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Save the bank as a file</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>bank.txt</source>
        <comment>a file&apos;s name</comment>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>wm::app::CallFields</name>
    <message>
        <source>Enter it</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Number to call in an emergency</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>number to call</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Where the shop is, as a caller says it</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>where the shop is, as a caller says it: street, door, how one comes in</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>In an emergency</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No number is entered: a manager enters it here.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Call %1.</source>
        <comment>a number</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Call %1. Say: %2.</source>
        <comment>a number, where the shop is</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>It is entered like that already.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No number is entered any more.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Entered. Cards for the wall that hang somewhere say what was entered before: print them anew.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>wm::app::CallSteps</name>
    <message>
        <source>Stop the machine at its emergency stop. Isolate it from its supply before anybody reaches into it.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Help as you were taught. Stay with whoever is hurt, and send somebody to the door.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Keep the scene as it is once everybody is cared for: nothing moved, nothing cleaned, nothing restarted.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Tell the manager. Local law may ask for a report within hours: see the notice beside this desk.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Only then enter it at the desk: the machine out of service, and what happened.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Only then enter it here: the machine out of service, and what happened.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1.  %2</source>
        <comment>number, step</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>1.  Call the local emergency number</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>1.  Call %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Say where you are, what happened, how many are hurt. Let them end the call.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Say: %1. What happened, how many are hurt. Let them end the call.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No number is entered for this shop. A manager enters it on the page Rosters.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>wm::app::Charts</name>
    <message>
        <source>below the pass mark</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>at the pass mark or above</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>How many had how many right</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>questions right, of %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>attempts</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>questions</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>to look at first</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>How hard each question is, and what it tells</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>had it right, in %</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>what it tells</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>wm::app::CheckoutsPage</name>
    <message>
        <source>One-on-ones</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Tonight&apos;s one-on-ones, and those still open</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>tonight&apos;s, then those still open</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>choose</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Sign</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Restrictions</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Resu&amp;lt</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Notes</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Assessor</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Si&amp;gnature</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Back to the Desk</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>no booking</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>signed</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>begun</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No one-on-one tonight</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Book one in the Diary, or open a person on the Desk and start from there.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Check-out: %1</source>
        <comment>a machine</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>sheet revision %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>with %1</source>
        <comment>an assessor</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the result</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No result is chosen</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Mark the lines that are left, or choose failed or stopped</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>This sheet cannot be signed as %1: %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Sign it as failed, or mend a mark that is wrong</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Finish the sheet, or sign it as failed or stopped</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the assessor</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Nobody is chosen</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Choose who watched %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the signature</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>It is not signed yet</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The assessor types their own PIN, then Enter</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The check-out of %1 is signed: %2.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Check-outs</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Marked so far while %1 sat here.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the run sheet</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Pass plan</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Marked after a cut, never while stock is moving.  1 shown · 2 shown when asked · 3 not shown · 0 no mark · M the measure; the arrows move, Right is the second time, Ctrl+Z takes a mark back.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>It was signed on revision %1 of the sheet, which is not the one shown here.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>none; or: no dado; with the adapted jig; with an interpreter</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Second assessor: mark it apart</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Show the marks</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Book the next one-on-one</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The marks are covered: whoever watched it too can mark it apart, without having seen them.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Marked apart: %1</source>
        <comment>a machine</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 That stands through the next check-out that is passed.</source>
        <comment>what is restricted, as a sentence</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Mark the first showing of each line, as you saw it. This counts for nothing in what anybody may use; Figures tells from it how far assessors agree.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Nobody sits at this station</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The second assessor sits down here first</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The second assessor types their own PIN, then Enter</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Marked apart by %1; what %2 may use stays as it was.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Print it blank</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>From a paper</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Choose their PIN</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>M&amp;ember</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Restrictions: what stays open and what aid was used, a semicolon between. Never a medical reason: nobody asks for one. The member countersigns: I was shown this machine&apos;s cautions.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Go on another day</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>put by</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>That was revision %1 of the sheet; on this one it begins anew.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the marks</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No instructor sits at this station</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Sit down with your PIN</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Kept at this station, not in the shop&apos;s store yet: %1. It goes there by itself.</source>
        <comment>why not, as a sentence&apos;s part</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Nothing is marked yet</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Move the booking in the Diary, if it is for another day</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Put by. Any station goes on with it, on any day; nothing counts before it is signed.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>PIN of %1 chosen.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A blank run sheet went to the printer.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A blank run sheet was saved as %1.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Read: put it away</source>
        <translation type="unfinished"></translation>
    </message>
    <message numerus="yes">
        <source>was marked at this station more than %n days ago and not signed</source>
        <translation type="unfinished">
            <numerusform></numerusform>
        </translation>
    </message>
    <message>
        <source>%1 %2.</source>
        <comment>whose run sheet, what became of it</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Read above the sheet what was marked here and not sent, then put it away</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>has become another revision since it was marked, so it is marked again</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>own PIN</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>their own PIN</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The second assessor&apos;s own PIN</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Se&amp;cond assessor</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the second assessor</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Two assessors sign a check-out on this machine</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Choose who watched %1 too</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 is chosen twice</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Choose who else watched %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 has not signed it yet</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 types their own PIN: this is what they watched too</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Marked after a cut, never while stock is moving.  1 shown · 2 shown when asked · 3 not shown · 0 no mark; the arrows move, Ctrl+Z takes a mark back.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Something else was written at another station meanwhile: both stand here now.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>To the run sheets</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>not countersigned</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>wm::app::ComputersPage</name>
    <message>
        <source>login</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Login</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What it is for</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1, this computer</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Computers: %1.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Computers</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The server knows a computer by the login that it comes in by. What it is for decides what can be entered there, whoever sits at it.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A manager says what it is for, in the office.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What can be done</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Say what it is for</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Another computer</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Say so</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Its login at the server</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>It is said what this computer is for.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>wm::app::CountersignFields</name>
    <message>
        <source>How the member countersigns</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>choose</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>with their PIN</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>with their card</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>on the printed sheet</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>not countersigned</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the member&apos;s own PIN</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The member&apos;s own PIN</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>hold it to the reader</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>held to the reader</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the member</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>It is missing how %1 countersigns</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Choose a PIN, a card, the printed sheet, or that it is not countersigned</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 has no PIN yet</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Let them choose one with Ctrl+Shift+P, or countersign in another way</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 has not countersigned yet</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 types their own PIN: they were shown this machine&apos;s cautions</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 holds their card to the reader: they were shown this machine&apos;s cautions</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>number at its foot</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Number of the printed sheet that the member signed</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The number of the sheet that %1 signed is missing</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Print a blank sheet with Ctrl+P, let them sign it, and type the number at its foot</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>wm::app::CountersignLater</name>
    <message>
        <source>Choose their PIN</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Countersign</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 has not countersigned it: nothing says that they were shown this machine&apos;s cautions.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 has countersigned: they were shown this machine&apos;s cautions.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>wm::app::DateField</name>
    <message>
        <source>d MMM yyyy</source>
        <comment>a date as a field shows it</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>“%1” is not a date</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Type it as 25 Nov 2026 or 2026-11-25, or leave it empty</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>wm::app::DayStrip</name>
    <message>
        <source>%1: %2</source>
        <comment>a unit: when it is booked</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>free</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The day by machine</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No machine is booked on this day.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>and %1 more with bookings</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>out of service</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>wm::app::DeskPage</name>
    <message>
        <source>Name, number or card</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Find a person by name, number or card</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>People who fit</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1, called %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1  %2</source>
        <comment>name, number</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Nobody is called that here. New people are entered on the page People.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Desk</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1. Machines without a supervisor: %2; only with one: %3.</source>
        <comment>number, count, count</comment>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>wm::app::DiaryPage</name>
    <message>
        <source>Machine</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>from today</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>First day shown</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Bookings and free times</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>by machine</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Waiting</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Book</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Put on the waiting list</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Arrived</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Late</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Not come</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Cancel…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the reason, then Enter; Esc keeps the booking</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Reason for cancelling</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>ddd d MMM</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1, %2</source>
        <comment>a day and a time</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>choose a machine</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 to %2</source>
        <comment>from a day to a day</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What is booked. Choose a member and a machine to see the times that fit.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What is booked. Choose a machine to see the times that fit %1.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Times that fit %1 on %2, among what is booked</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Nothing fits %1 on %2 in these days.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Book %1</source>
        <comment>a day and a time</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Take off the waiting list</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>that time</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>It does not fit any more: somebody has booked meanwhile, or it has begun</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Choose another from the list, which is up to date now</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 is booked: %2, %3, with %4.</source>
        <comment>member; day and time; machine; assessor</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 has arrived.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 is late.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 has not come.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the reason</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A cancelled booking keeps its reason</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Write a word or two, then press Enter</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The booking of %1 is cancelled: %2.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 is off the waiting list for %2.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 is on the waiting list for %2.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Diary</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What was booked, as known then.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Fit everyone…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>1 one-on-one is booked.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 one-on-ones are booked.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 of %2 are booked; the others do not fit any more, or could not be entered.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What for</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Hold it</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Move…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Keep its time</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Copy a reminder</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Print this day&apos;s reminders</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Move to %1</source>
        <comment>a day and a time</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Change places with %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>It is for certain</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Booked and not come: %1 times, the last on %2.</source>
        <comment>how often, a day</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>By the shop&apos;s rule nothing is booked for them through %1.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 comes for certain.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>changed places</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 and %2 have changed places. Tell both.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A reminder for %1 is copied: paste it into a message.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No longer possible: %1 of these bookings.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Choose another time for %1 on %2, or somebody to change places with</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 is moved: %2, %3, with %4.</source>
        <comment>member; day and time; machine; assessor</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 has a time held: %2, %3, with %4.</source>
        <comment>member; day and time; machine; assessor</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No longer possible after these days: %1.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>They are on the waiting list again, since %1.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>wm::app::DiaryRows</name>
    <message>
        <source>signed: passed</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>signed: failed</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>signed: stopped</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>arrived</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>late</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>not come</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>teaching</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>practice</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>check-out</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 with %2</source>
        <comment>member, assessor</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>free with %1</source>
        <comment>an assessor</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Nothing is booked in these days.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Nothing on this day.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>due now</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>due in a minute</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>due in %1 minutes</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>due in %1 hours</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>dddd d MMMM</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>dddd d MMMM yyyy</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Today, %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>held through %1, %2; not for certain</source>
        <comment>a day, a time</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1; %2</source>
        <comment>how a booking is, what is restricted</comment>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>wm::app::EmergencyCover</name>
    <message>
        <source>Somebody is hurt</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Back to where you were</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>wm::app::EmergencyPage</name>
    <message>
        <source>Put a machine out of service</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Machine</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What is wrong</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Tag, as it hangs on the machine</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Out of service</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Stop somebody for tonight</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Who</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Why (only instructors and managers read it)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Pause for tonight</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 is out of service. Hang the tag on it now.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Nobody is chosen</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Type part of a name and press Enter</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 is paused on every machine through today.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Somebody hurt, machine broken</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>choose a machine</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Choose it from the list</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No machine is chosen</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Nobody sits here. All of the above works like that. To put a machine out of service or to record what happened, whoever has a PIN sits down first (F10): once help is on its way, there is time. What is typed stays.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>This page is about now: the dates have gone back to it.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Enter the number…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Change the number…</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>wm::app::EndView</name>
    <message>
        <source>Done</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Passed: %1.</source>
        <comment>marks</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Not passed yet: %1; %2 % are needed.</source>
        <comment>marks, a percentage</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1: %2</source>
        <comment>a machine, how</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Ask for the one-on-one: %1</source>
        <comment>a machine</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>You are on the waiting list for %1. The desk confirms the time.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1, %2</source>
        <comment>how, what is restricted</comment>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>wm::app::FigureWords</name>
    <message>
        <source>nobody</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>one attempt</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>one question</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>all alike</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>drawn papers</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>other lengths</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1: %2</source>
        <comment>two words that stand for a figure, why there is none</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>there is no attempt.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>it takes two at least.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>there is nothing beside it to compare it with.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>where nobody differs, nothing can be told apart.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>this figure needs everybody to have been asked the same questions.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>this figure needs papers of one length.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>over 99 %</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>under 1 %</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 %</source>
        <comment>a percentage</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 (%2 to %3 %)</source>
        <comment>a percentage, the interval it lies in</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>choice %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The best members get this wrong more often than the weakest.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The better somebody did on the rest of the paper, the more likely it was that they chose “%1”, which counts as wrong.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Fewer get this right than would by guessing: %1, where guessing gives %2.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Strong and weak members get this right about alike.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Nobody ever chose “%1”.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>See whether the key is right, and whether another choice is right as well.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>See whether its words are understood, and whether the lesson says the answer.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>See whether it asks for what matters, and in plain words.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A wrong choice that tempts nobody could as well be left out.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Right: %1 of %2, %3. With the rest of the paper: %4. With the whole paper: %5.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>wm::app::FiguresPage</name>
    <message>
        <source>Figures of</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Figures</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>CSV</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>PDF</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Print</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Figures show which answers are right. They open for instructors and managers.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The figures are being worked out.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>To look at first</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>nobody yet</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 attempts, %2 passed</source>
        <comment>a number, a percentage</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No quiz has been sat at a station yet.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Attempts: %1, from %2 to %3.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Left out, since the answers have been erased: %1.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No question bank has been issued yet.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Save the figures as CSV</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>figures.csv</source>
        <comment>a file&apos;s name</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>CSV (*.csv)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Save the figures as a PDF</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>figures.pdf</source>
        <comment>a file&apos;s name</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>PDF (*.pdf)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Figures saved as %1.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Figures saved as %1. Pages: %2.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Figures sent to %1.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1: %2 %3</source>
        <comment>a quiz, a question, what is odd about it</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Nobody has sat this quiz yet.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Attempts: %1. Passed: %2.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Left out, since their revision can&apos;t be read: %1.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Questions to look at first</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Something is wrong with these, as far as answers can tell. A question is looked at once it has %1 answers; of those with nothing wrong, about one in twenty comes up by chance.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No question stands out. One is looked at once it has %1 answers.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>These tell little</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>These have a choice that nobody takes</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Assessors who differ</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Every question</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>With the rest of the paper: from ℡ to 1; above 0 the strong have it right more often than the weak, as they should. Each revision of a question stands by itself.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>sheets: %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>All lines together. %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1. %2</source>
        <comment>a line, how far they agree</comment>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>wm::app::FiguresPaper</name>
    <message>
        <source>right</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1, %2</source>
        <comment>how often, a percentage</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Questions to look at first</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Figures of the quizzes</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>As known on %1, %2. It shows which answers are right.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Ledger %1</source>
        <comment>a code of letters and figures</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The printer did not take the figures.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>See whether it is on, or save a PDF and print that.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Assessors who differ</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1. %2</source>
        <comment>a line, how far they agree</comment>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>wm::app::FirstLookWindow</name>
    <message>
        <source>%1 – Witnessmark</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>name, nickname or number</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>People found</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Who is at the desk?</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Nobody of that name</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No rulebook is in force: nobody may use anything.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The shop&apos;s records are being read. Look somebody up meanwhile. Who is here, what is out of service and all else follow by themselves. Nothing can be entered before that.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>wm::app::FitView</name>
    <message>
        <source>Proposed one-on-ones</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Left out, and why</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Book what is ticked</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Back to the diary</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Fit everyone who waits</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Looking for times: %1 of %2 people. Esc stops.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Working out who is served when: %1 so far. Esc stops and shows that.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Stop</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Looking for times.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Nobody is left out.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1, %2: %3</source>
        <comment>member; machine; why</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Book the %1 that are ticked</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>wm::app::Form</name>
    <message>
        <source>Leave it</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>wm::app::GroupEntry</name>
    <message>
        <source>A group that had a lesson</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Enter all of it</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What will happen, line by line</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>All of it is entered, or nothing. It counts for the revision that is taught now, from now on.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Who was there</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>no paper</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Which lesson</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>choose</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Paper that each has signed, and you have seen</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>no end</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The paper is good through</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Who instructed (space marks them)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1: %2</source>
        <comment>what was typed, what is wrong</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1: new, will be entered</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1: here already</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1: here already, number %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1; had this lesson before</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 names: %2 here already, %3 new, %4 wrong.</source>
        <translation type="unfinished"></translation>
    </message>
    <message numerus="yes">
        <source>With these instructors the rules allow %n people.</source>
        <translation type="unfinished">
            <numerusform></numerusform>
        </translation>
    </message>
    <message>
        <source>It is not said which lesson</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Choose it from the list</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The last day is no date</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Type it as 25 Nov 2026, or leave it empty</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Nobody is named</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Type or paste the names, one a line</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 people had the lesson: %2. New here: %3.</source>
        <comment>count, lesson, count</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1. %2</source>
        <comment>a line&apos;s number, what will happen</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>One name a line: Kim Aoki; or Aoki, Kim; or a number, with or without a name. A + before it: somebody else of that name</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1. Look first whether this is %2</source>
        <comment>what will happen, who</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1, number %2</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>wm::app::Groups</name>
    <message>
        <source>Attempts</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Passed</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Mean</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Deviation</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>KR-20</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>KR-21</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Alpha</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Standard error</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Attempts are counted, not persons. Passed: by the quiz&apos;s own pass mark, with Wilson&apos;s 95 % interval. Mean, deviation and standard error are in questions.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>KR-20, KR-21 and Cronbach&apos;s alpha tell how far another paper of the same kind would rank people alike: 1 is perfect, and at 0 or below scores differ no more than by luck. They need people who differ: where nearly everybody passes, they are low, and that is no fault of the quiz.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Standard error: about how far a score lies from what the person would have on average over many such papers.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>All</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Revision %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>In %1</source>
        <comment>a language</comment>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>wm::app::HandInView</name>
    <message>
        <source>Hand in</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Back to the questions</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Every question has an answer.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>1 question is open; an open one is not right.</source>
        <translation type="unfinished"></translation>
    </message>
    <message numerus="yes">
        <source>%n questions are open; an open one is not right.</source>
        <translation type="unfinished">
            <numerusform></numerusform>
        </translation>
    </message>
    <message>
        <source>You wanted to come back to 1.</source>
        <translation type="unfinished"></translation>
    </message>
    <message numerus="yes">
        <source>You wanted to come back to %n.</source>
        <translation type="unfinished">
            <numerusform></numerusform>
        </translation>
    </message>
    <message>
        <source>Once handed in, nothing can be changed.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>wm::app::HereNow</name>
    <message>
        <source>%1 (on duty)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>, </source>
        <comment>between names</comment>
        <translation type="unfinished"></translation>
    </message>
    <message numerus="yes">
        <source>In the building, as noted: %n of the shop&apos;s</source>
        <translation type="unfinished">
            <numerusform></numerusform>
        </translation>
    </message>
    <message>
        <source>Nobody has been noted as here.</source>
        <translation type="unfinished"></translation>
    </message>
    <message numerus="yes">
        <source>Visitors in the building: %n</source>
        <translation type="unfinished">
            <numerusform></numerusform>
        </translation>
    </message>
    <message>
        <source>No visitor has been noted.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Whoever came in without being noted is not here: look in every room.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Out of service</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No machine is out of service.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Take the padlock off: %1…</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>wm::app::HoursPage</name>
    <message>
        <source>Monday to Friday</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>every day</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>From</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>To</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>hours</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>That is no time of day</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Type it as 17:30 or 5:30 pm</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>day</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>That is no date</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Type it as 25 Nov 2026</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Weekly hours of the shop</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Add these hours</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The shop is open</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Somebody is on duty</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Every</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Adults on duty at once</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A one-on-one is booked only while the shop is open and somebody is on duty. Somebody under 18 is booked only while two adults are in: with two on duty, or one more in by their own hours.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Hours of the shop added.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>adults</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Close it, or other hours</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1: away, or other hours</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Enter it</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>First day</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>which day</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Last day</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the same day</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Hours on each of these days</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>closed; or 12:00-14:00, 17:00-20:00</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>away; or 12:00-14:00, 17:00-20:00</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Why (may stay empty)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>These hours take the place of the week&apos;s on those days; without any there are none.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The shop&apos;s hours on those days are entered.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Entered for %1.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Maintenance of a unit</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Unit</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Nothing is booked on it from the first time on the first day to the second on the last. This puts nothing out of service: that is done at the machine, with a padlock and a tag.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Maintenance entered.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>How the shop books</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Book like this from now on</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Longest wait, in days</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A time is held, in hours</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Not come so many times</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>within so many days</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>is booked again after so many days</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Whoever has waited longer comes first when everyone is fitted. What stays empty is no rule.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>How the shop books is entered.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A one-on-one on %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Book it like this</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>How long it lasts, in minutes or as 1:30</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What is booked already stays as it is.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>How long a one-on-one on %1 lasts is entered.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>length</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>It does not say how long</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Type minutes, or 1:30</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A break of %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>When is %1 usually in?</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Add this break</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A break of %1 added.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Hours of %1 added.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What %1 takes on</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Longest day, in minutes or as 4:00</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>At most on end</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>then a break of</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What stays empty is no limit. What is booked already stays, and counts.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What %1 takes on is entered.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>a name, a machine, closed</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>When</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>no hours entered: at all hours</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>no hours entered: whenever it is open</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Closed</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Other hours</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Maintenance</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>away %1</source>
        <comment>days</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>other hours %1</source>
        <comment>days</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>busy times from a calendar: %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>no hours entered: never offered</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>One-on-one: %1</source>
        <comment>a machine</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The Diary offers times by these hours.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The Diary offers times by these hours. A manager enters them.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Strike this out</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>no longer so</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Struck out: %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Other than every week</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Hours give nobody permission for anything; they say when a one-on-one can be booked.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The shop&apos;s hours</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No hours are entered yet: one-on-ones are offered whenever somebody who assesses is in.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1, %2</source>
        <comment>weekday, hours</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No hours are entered: the Diary offers no time with them.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What can be done</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Save one-on-ones as a calendar</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A one-on-one on it lasts %1.</source>
        <comment>a length of time</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Change how long</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Add weekly hours</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Add a break</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What they take on</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Away, or other hours</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Take in when they are busy</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The shop</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Add weekly hours of the shop</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Hours</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>wm::app::ImportView</name>
    <message>
        <source>enters</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>here already</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>wrong</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Take in a CSV file</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Choose the file</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No file yet.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What the file holds</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>People</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Training history</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Units</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Assessors&apos; hours</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Bookings</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Letters</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>as guessed</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Between columns</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>comma</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>semicolon</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>tab</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>3/4/2026 is</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>not said</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>4 March</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>3 April</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>It holds</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Which column is what</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Nothing is entered before you have seen it.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What would be entered</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Rows that are wrong</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Enter all of it</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Leave it</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Tables (*.csv *.txt *.tsv)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 can&apos;t be read: %2.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>not chosen</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>not in the file</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Line %1: %2 can be two dates. Say at the left which number is the month.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Line</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What comes of it</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Remark</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Nothing can be entered yet: see what is wrong below.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Rows that enter: %1. Here already: %2. Wrong: %3. All of it is entered, or nothing.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Taken in from %1. Rows: %2.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1: %2</source>
        <comment>line and column, what is wrong</comment>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>wm::app::IncidentForm</name>
    <message>
        <source>today</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>choose a machine</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>choose</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>1, the gravest</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>2, grave</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>3, slight</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>4, a near miss</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>now</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Record what happened</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What happened, without names: it stays when somebody&apos;s details are erased</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Record it</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>At which machine</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>How grave</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>At what time</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>On which day</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A near miss costs nobody anything, and nobody has to be named for it: record every one.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A near miss takes nothing away from anybody. Name who was there, or nobody.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>By the rules whoever was working is checked out again after this, so name them. Who was hurt, supervised or saw it loses nothing by it.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>An instructor or a manager records this: let them sit down here; what is typed stays.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Choose it from the list</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No machine is chosen</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>It is not said how grave it was</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>It is not said what happened</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Say it in a few words</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Choose the machine: its rules say whether somebody has to be named.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>By the rules nobody loses anything by this. Name who was there, or nobody.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>wm::app::IssuedSheets</name>
    <message>
        <source>As it comes with the program.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>wm::app::JournalPage</name>
    <message>
        <source>words of a record, a name, a note</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>When</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What it says</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Entered by</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What I did &amp;this shift</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Kind of record</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Person</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Every kind</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Everybody</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Records: %1 of %2, latest first.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>from paper, %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>struck out on %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>struck out on %1 by %2: %3</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No such record</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>This record is %1.</source>
        <comment>struck out on ...</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Happened</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1, %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Entered</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>By</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>From</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>a paper from the past</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Note</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Record</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>number %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What can be done</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Strike out</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Open %1 at the desk</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Why</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>It stays in the journal, struck out, with this reason and your name. From then on it counts for nothing.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Struck out.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>why</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>There is no reason yet</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Write why it is struck out</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Journal</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Nobody&apos;s standing rests on it now.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Standings that rest on it now: %1.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Vouched for by</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Look the file through</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Erase its text</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Erase it for good</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The details of then go, and nobody can bring them back. Pages that show what was known then show the details that took their place.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The note, the reason or the answers in this record go, and nobody can bring them back. The record stays, and all that rests on it.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Copies of the shop made before still have it: the oldest backup goes last.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Erased.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Type the record&apos;s number to go on: %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>number</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>That is another number</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Type it as it stands above, or leave it</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Show the quiz as sat</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>wm::app::LeaveView</name>
    <message>
        <source>PIN</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Leave</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Go back</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Somebody of the desk</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Leaving ends this attempt: it is marked as it stands. The desk can let you leave.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The desk can close the station.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Nobody is chosen. Type part of the name and press Enter.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>That takes somebody of the desk.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>wm::app::Legend</name>
    <message>
        <source>known to come</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>wm::app::LessonBrowser</name>
    <message>
        <source>Lesson</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>wm::app::LessonReader</name>
    <message>
        <source>Parts of the lesson</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Leave it</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Large type</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Go on</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1, read</source>
        <comment>a part</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Usual type</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Watch %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Open %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>This computer opens no web pages</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Open %1 on another one</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 cannot be shown: it is no whole PDF</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Ask a manager to issue the lesson again with it</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The video %1 is not on this computer</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Put it at %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>This computer has no player for %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Watch it on another one: the file is %1</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>wm::app::LessonsPage</name>
    <message>
        <source>a lesson, a quiz, a check-out</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Name</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Revision</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Since</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>lesson</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>quiz</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>check-out</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>, </source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>not asked for now</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>none</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>next on %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Names: %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The rulebook asks for none yet</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>None of that name</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The rulebook in force does not ask for it.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The rulebook asks for it as: %1.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Revision %1 counts.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No revision is published: every one counts.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What can be done</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Publish a revision</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Published</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>revision %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>revision %1: %2</source>
        <comment>a number, what is new</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Publish %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Publish it</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>now</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Counts from</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What is new in it</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Published.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>revision</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>That is no revision</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Type a whole number, such as 3</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>day</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>That is no day</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Type it as 2026-12-01, or leave it empty for now</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Lessons</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Who needs it</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Its text</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Not issued here: it is taught from elsewhere, and attested by staff.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Revision %1 counts, but its text is not issued: what can be read is revision %2.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Read it</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Go through it here</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Attest it for somebody</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Issue its text</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Issue revision %1 of %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Issue it</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The page: a Markdown file, its pictures beside it</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Choose the file</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The lesson&apos;s page</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Markdown (*.md)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Who goes through it</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>everybody who needs it, again</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>only who has not yet: mended words</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Nobody has to do it again. The text counts at once.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Revision %1 of %2 issued.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1: attest that somebody has been taught it</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Attest it</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Who was taught</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>By whom, where</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>It is recorded under your name, as taught and not as read here.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Lesson attested.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>person</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Nobody is chosen</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Type a name or a number</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Go through %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Begin</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Stay with them: it is recorded under your name once every part was on the screen.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Revision %1 counts, and its text is not issued</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A manager issues it first, or staff attest what was taught from elsewhere</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Revision %1, issued %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>, gone through by %1</source>
        <comment>ends a phrase</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Gone through part by part on the screen.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 has gone through %2.</source>
        <comment>a person, a lesson</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>People who have it in an earlier revision: %1.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Nobody would have to do it again for their standing.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Without it they fall back, people: %1. How long they have:</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>wm::app::LookView</name>
    <message>
        <source>The root from the paper</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Look it through</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Back to the journal</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Root from the foot of a paper</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the root at the foot of a printed paper, where one is at hand</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Look the shop&apos;s file through</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The file is being looked through. The other pages can be used meanwhile.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>It could not be looked through.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Everything is worked out again from the records, and every signature since the last look is verified: what was altered, added, removed or cut off behind the program&apos;s back is found and named. Against a root from a paper that was printed earlier, nothing before it can have been made anew.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>wm::app::MachinesPage</name>
    <message>
        <source>unit, machine or tag</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Tier</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Machine</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Unit</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>State</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>in service</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>out of service</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Units: %1. Out of service: %2.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Tier %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The rulebook in force does not have this machine.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>In service. Its limits card and the maker&apos;s manual come first.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No unit here yet</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No such unit</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Another unit</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>New unit</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Out of service</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Tag</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Why</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Put on by</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Padlock</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Key with</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Tried to reach</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1, %2: %3</source>
        <comment>day, who, how</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Record an attempt to reach them</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Take my padlock off</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Take this padlock off</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What can be done</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Put out of service</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Put another padlock on</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Record a change</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>History</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Put %1 out of service</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Who holds the key</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Isolate it, put the padlock on, hang the tag, and try to start it before you go.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 is out of service.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>An attempt to reach %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Record it</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>How, and what came of it</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>telephoned, no answer</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Attempt recorded.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>how</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>It does not say how</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Write how they were tried, and what came of it</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Take the padlock off</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What was done</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Look the machine over first: guards on, tools away, nobody near. Taking a padlock off says nothing about the machine&apos;s state.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Padlock taken off.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A change to %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Record the change</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What was changed</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>new cutterhead, another guard</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>On</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Change recorded.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Enter the unit</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What it is called</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Its number, as on the machine</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Unit entered.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>unit</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A unit needs what it is called and its number</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Type both</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>number</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Another unit has this number</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Type the number that is on this one</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Machines</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Limits card: %1</source>
        <comment>a machine</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Revision %1, issued %2 by %3. %4</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Change this card</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Write its card</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Issue revision %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Card issued: %1.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Save one-on-ones as a calendar</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Since</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Not checked out again since: %1.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Who put it on, and takes it off</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Of what kind</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Which unit</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>every unit of this machine</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The rules ask nobody for a new check-out after it. Check-outs are for the machine, not for one unit.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Nobody&apos;s standing changes by it now.</source>
        <translation type="unfinished"></translation>
    </message>
    <message numerus="yes">
        <source>%n people&apos;s standings change: %1.</source>
        <translation type="unfinished">
            <numerusform></numerusform>
        </translation>
    </message>
    <message>
        <source>%1, %2</source>
        <comment>a day and a time</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1, put on by %2</source>
        <comment>tag and padlock, name</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>At what time it was changed</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>now</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>today</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>On which day</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Using it, by your word</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>has changed: the rules count</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>is as before: kept on record only</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No check-out is asked for again: it stands in the history, and that using the machine is as before is your word.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>From then on these check-outs are asked for again, on every unit: %1.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>wm::app::MainWindow</name>
    <message>
        <source>%1 – Witnessmark</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Back to now</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Answers are for %1, as known on %2.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Answers are for %1.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Answers are as known on %1.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>This card belongs to nobody here</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Type the name instead, or give the card to a person on the page People</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The clock is right</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>This computer&apos;s clock shows %1, %2.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>That is before the last entry, or it was set back while the shop was open.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>It was set ahead while the shop was open.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The clock counts as right from now on.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Put it right, or let a manager say here that it is right; nothing can be entered before that.</source>
        <translation type="unfinished"></translation>
    </message>
    <message numerus="yes">
        <source>Nobody touched the keys for %n minutes: nobody sits here any more.</source>
        <translation type="unfinished">
            <numerusform></numerusform>
        </translation>
    </message>
    <message>
        <source>A quiz is going on at the station</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Wait for its end</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>This page is not used at this computer</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Use it at the front desk or in the office</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>wm::app::MessageBar</name>
    <message>
        <source>Close</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>wm::app::NeedList</name>
    <message>
        <source>there: %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>missing: %1</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>wm::app::Paper</name>
    <message>
        <source>Page %1 of %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The PDF could not be written: %1.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Choose another folder or name.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>wm::app::PaperEntry</name>
    <message>
        <source>day</source>
        <comment>on which it was</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The &amp;member signed the paper too</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>From a paper</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>at the foot of the paper</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Number of the paper</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Run &amp;sheet</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Membe&amp;r</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Unit</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>17:30</source>
        <comment>a time as it is typed</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>At what time</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Day and time</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Assessor, who signed the paper</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Resu&amp;lt</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Restrictions, a semi&amp;colon between; never a medical reason</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>N&amp;otes</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Back to the one-on-ones</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Enter this paper</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1, revision %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Choose which run sheet the paper is.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Choose it from the list</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>number</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The number of the paper is missing</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>It stands at the foot of each page</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>run sheet</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No run sheet is chosen</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>member</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Nobody is chosen</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Type a part of the name, then Enter</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>unit</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No unit is chosen</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>assessor</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>It is missing who signed the paper</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>result</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No result is chosen</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The marks do not come to %1: %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Look at the paper again</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>day</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>It is missing when it was</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Type the day and the time that stand on the paper</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Paper %1 entered: the check-out of %2 was %3.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A second assessor&apos;s, mar&amp;ked apart</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Mark each line as it is marked on the paper.  1 shown · 2 shown when asked · 3 not shown · 0 no mark · M the measure. The paper says who signed it; the journal says who typed it. Keep the paper.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>It changes nothing in what the member may use; it tells how far assessors agree.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No check-out of %1 on this sheet and unit was signed that day</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Look at the paper again; where the first assessor&apos;s is a paper too, enter that one first</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Paper %1 entered: marked apart by %2; what %3 may use stays as it was.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Second assessor, &amp;who signed it too</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>second assessor</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Two assessors sign a check-out on this machine, and one is named</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Type a part of the second one&apos;s name, then Enter</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Mark the first showing of each line as it is marked on the paper.  1 shown · 2 shown when asked · 3 not shown · 0 no mark. The paper says who signed it; the journal says who typed it. Keep the paper.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>wm::app::PaperForm</name>
    <message>
        <source>no end</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Which</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Good through</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Questions right</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Questions in all</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Critical questions missed</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Enter it</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Leave it</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Take a paper of %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 was at a lesson</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A quiz of %1, marked on paper</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>You have seen the paper and it is in the file.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Counts for the revision that is taught now.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Entered for %1: %2.</source>
        <comment>who, what</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>today</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Taken on</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>choose</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>It is not said which</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Choose it from the list</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>wm::app::PeoplePage</name>
    <message>
        <source>name, nickname or number</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Name</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Called</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Number</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>At the desk as</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>People: %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Found: %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Nobody here yet</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Nobody of that name</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Somebody else</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>New person</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Take in a CSV file</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Number %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Card</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Phone</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Email</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>In an emergency</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Entries joined to this one</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1, joined on %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Strike this join out</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Strike the join out</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Strike out</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Why</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Struck out: they are two people again.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What can be done</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Open at the desk</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Correct details</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Choose a PIN</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Role at the desk</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Join another entry</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 entered.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Details of %1 corrected.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Join</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 stays. All that is recorded of the other entry counts as theirs. It can be struck out.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The other entry of this person</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Joined: two entries, one person.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>other entry</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Nobody is chosen yet</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Type part of a name and choose with Enter</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Give this role</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 sits down as</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The role says what may be entered at the desk. It is no permission at a machine.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Role of %1 changed.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>PIN of %1 chosen.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>People</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Usually in</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 %2</source>
        <comment>weekday, hours</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No longer in on %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>no longer in then</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The Diary no longer counts on %1.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>When is %1 usually in?</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Add these hours</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Every</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>From</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>To</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The Diary offers one-on-ones in these hours, with whoever may assess the machine then. They give nobody permission for anything.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Hours of %1 added.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>hours</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>That is no time of day</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Type it as 17:30 or 5:30 pm</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Blank the details of %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Blank them for good</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Names, number, card, phone, mail, emergency contact, PIN, birth date and the notes on their records go, and nobody can bring them back. The records stay, so that the shop can still say what was decided and why, but no longer about whom.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Type the name to go on: %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The details are blanked.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>name</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>That is another name</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Type it as it stands above, or leave it</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Add weekly hours</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Blank the details</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Paused</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>End this pause</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>End it</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>From now on they stand as their papers, lessons and check-outs say.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The pause has ended.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Close to them</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No longer close</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>no longer close</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Struck out.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Name somebody close</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Who is close to %1?</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Name them</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Family, a partner, a close friend</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Where the rulebook says so, neither signs a check-out for the other. Everybody at the desk can see it.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Named as close.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>close</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>All that is held about %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Write both files</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Two files are written: a PDF to read or print, with details, what may be used and why, and every record; and the same as JSON, with which the records can be shown to be in the ledger. They hold birth date and notes: give them to %1 and to nobody else.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Folder</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Choose the folder</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A folder for the files</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>folder</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>There is no such folder</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Choose one that is there</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Written: %1. Give both files to nobody else.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 and %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Give out all that is held</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Details that may &amp;go</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The last record that names this person is of %1. By the rulebook the details may be blanked since %2.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>choose</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>everything</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Tier %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>no end</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Through</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>of what</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Nothing is chosen yet</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Choose everything, a tier or a machine</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>through</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>That is no date</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Type it as 25 Nov 2026, or leave it empty</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Assesses</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>End this appointment</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>From now on they assess nobody by it. What they have signed before goes on counting.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The appointment has ended.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Appoint %1 to assess</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Appoint them</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Of what</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>They assess</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 is appointed.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Pause %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Pause them</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>On what</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Why; for instructors and managers only</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>They use nothing of it, with a supervisor or without, through that day or as long as nobody ends it. The desk reads only that they are asked to speak to the manager.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 is paused.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>why</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>There is no reason yet</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Write why they are paused</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Appoint to assess</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Pause</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>by their own standing</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>from the start, for a time</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>By their own standing: what they may use without a supervisor themselves. From the start: whatever they may use, since somebody must check out the first assessors. An appointment says who may sign a check-out; it is no permission at a machine.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Quizzes sat</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1, %2: %3 of %4 right</source>
        <comment>which quiz, day, marks</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Save one-on-ones as a calendar</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A visitor for the day</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A group that had a lesson</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Visitors here now</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 has left</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The visitor</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The visitor has left.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Let them in</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the rules for visitors</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Paper that they have signed</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Who stays with them</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>nobody has been noted as here</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A visitor uses nothing, and is gone from here when the day is over. Show them the way out, and what to stay away from.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The visitor is noted as here.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Nobody is named who stays with them</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Choose somebody who is here</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Visitors&apos; names that may go: %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>And %1 more.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Erase these names for good</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The names are erased; the visits stay.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>wm::app::PersonBox</name>
    <message>
        <source>name or number</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Person</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>People who fit</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1  %2</source>
        <comment>name, number</comment>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>wm::app::PersonForm</name>
    <message>
        <source>same name</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>similar name</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>same number</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>same card</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>same phone</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>same email</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Correct details</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>New person</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Save</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Given name</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Family name</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Called, if not by it</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Number</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Card</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>day, month and year</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Birth date, kept from sight</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Phone</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Email</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>In an emergency, call</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>It is the first of these</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>name</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>There is no name yet</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Type a given name, a family name or both</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>birth date</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The birth date is no date</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Type it like 14 March 1998, or leave it empty</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>and %1 more</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Perhaps here already:</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1, %2</source>
        <comment>name, number</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1: %2</source>
        <comment>who, why</comment>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>wm::app::PersonPaper</name>
    <message>
        <source>This is a copy for the person it is about. Hand it to nobody else.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Details</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The details were erased; the records stay, under the number %1.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Name</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Called</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Number</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Card</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Phone</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Email</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>In an emergency</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Born</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>At the desk as</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Usually in</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 %2</source>
        <comment>weekday, hours</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What may be used, and why</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Every record that names this person</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Records about others that this person entered: %1.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Record %1, entered %2 by %3.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>From a paper.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Vouched for by %1.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Struck out on %1.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Note: %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1, %2</source>
        <comment>day, time</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>All that is held about %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>As known on %1, %2.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Ledger %1</source>
        <comment>a code of letters and figures</comment>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>wm::app::PinForm</name>
    <message>
        <source>A PIN for %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Take this PIN</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>PIN</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The same again</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Let %1 type it, out of sight.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Four digits are enough for this station, which wrong ones slow down. Whoever takes the shop&apos;s file away tries all of them within minutes; each digit more makes that ten times as long. What is signed with the PIN stays safe even then: its key needs this computer&apos;s own secret too, which is not in that file.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The two are not the same</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Type both again</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>wm::app::PlanDrawing</name>
    <message>
        <source>The board from its end, with each pass at its height</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>wm::app::PlanView</name>
    <message>
        <source>Machine</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Face or edge</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>a face</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>an edge</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Crown up: it does not rock</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Fence at 90°, tried with a square</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Length</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Width</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Thickest place, as measured</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Where nobody measured, thicker by</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Final thickness</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The caliper reads to</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Hollow: the gap under a straightedge</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The passes, one by one</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>How</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Set to</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Wheel, divisions</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Cuts at most</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Measure</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Back to the sheet</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>PDF</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Print</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1: %2</source>
        <comment>a line of a limits card, its value</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Pass plan</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No machine has a limits card yet. A manager issues one on the page Machines.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Type the sizes, such as 1 3/8, 0.992 or 25.2 mm.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Pass plan: %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No plan. %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1. %2</source>
        <comment>a number, what is done</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Limits card of %1, revision %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Save the pass plan as a PDF</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>pass-plan.pdf</source>
        <comment>a file&apos;s name</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>PDF (*.pdf)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Pass plan saved as %1.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The printer did not take the plan.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>See whether it is on, or save a PDF and print that.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Pass plan sent to %1.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>choose</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>0 where all of it was measured</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Measured where it was cut</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 has no limits card. A manager issues one on the page Machines.</source>
        <comment>a machine</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Choose the machine: the plan goes by its limits card.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>after a pass that cut</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>wm::app::Printed</name>
    <message>
        <source>The paper is out, but the journal does not say so.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>wm::app::QuestionCard</name>
    <message>
        <source>right</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 of %2, %3</source>
        <comment>a choice: how often, a percentage</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1, %2, question %3</source>
        <comment>a quiz, a topic, a question&apos;s id</comment>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>wm::app::QuestionPreview</name>
    <message>
        <source>Tick all that are right.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Put them in order; they are shown shuffled.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Type a number.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Point at a place in the picture.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the steps in the order in which they stand here</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1, within %2</source>
        <comment>a number, its tolerance</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>one place in the picture</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>any of %1 places in the picture</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The picture %1 is not here.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Right: %1</source>
        <comment>what counts as the right answer</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Critical: whoever gets it wrong does not pass.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>wm::app::QuestionView</name>
    <message>
        <source>Back</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Come back to this one</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Next</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Hand in</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Large type</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Leave…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Question %1 of %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>critical: needed to pass</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No need to come back</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 beside it</source>
        <comment>a language</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>One language</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Smaller type</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>wm::app::QuizForm</name>
    <message>
        <source>Offer it for later</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Leave it</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 takes the quiz: %2</source>
        <comment>who, which</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1: %2</source>
        <comment>what, how much</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>It opens over the whole of the second screen.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>There is no second screen: it opens over the Desk, and nobody sits here any more. The desk&apos;s PIN leads back.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Start it on the second screen</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Start it on this screen</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>There is no second screen, and the Desk is needed before the quiz would end: %1 is due at %2.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Offered: the quiz stands under Tonight, and %1 can begin it at any quiz station with the member&apos;s number.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>wm::app::QuizStation</name>
    <message>
        <source>Quiz station – Witnessmark</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The time is over.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Left with the desk&apos;s help.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1. Each part is read once its end was on the screen.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Entered: you have gone through this lesson.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>wm::app::RestoreView</name>
    <message>
        <source>The backup is whole. What would be lost can&apos;t be told: the shop&apos;s file can&apos;t be read.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The backup is whole. Nothing has been entered since: nothing is lost.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The backup is whole. One entry made since would be lost.</source>
        <translation type="unfinished"></translation>
    </message>
    <message numerus="yes">
        <source>The backup is whole. %n entries made since would be lost.</source>
        <translation type="unfinished">
            <numerusform></numerusform>
        </translation>
    </message>
    <message>
        <source>Entered</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What would be lost</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>By</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Put it back</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Leave it</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Entries that would be lost</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Put back the backup of %1, %2</source>
        <comment>day, time</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>It is being read through and compared with the shop as it is now.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>It can&apos;t be put back.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The file of now is kept beside it, under a dated name. Every other window on this shop must be closed first.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1, %2</source>
        <comment>day, time</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>import</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>wm::app::Roster</name>
    <message>
        <source>Tier %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>unsupervised: without a supervisor</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>supervised: only with a supervisor</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>no: not yet, or paused</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>overdue: may through the day shown, re-check now</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>assesses: also signs check-outs</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>not listed: no</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Nobody may use any of these machines.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>As known on %1, %2.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Rulebook %1.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No rulebook in force.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Take down after %1.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Who may use what</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1, on %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1, %2, on %3</source>
        <comment>shop, tiers, day</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>assesses</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>no end</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>through today, %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>overdue, %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>assesses, %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>through %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Tier %1, continued</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1, %2</source>
        <comment>a machine, its mode</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1, continued</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Nobody may use it.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Nobody may use any machine.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Not listed: may not use it.  Overdue: may through the day shown, re-check now.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>;</source>
        <comment>between names that have commas</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Sign check-outs:</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Only with a supervisor: %1</source>
        <comment>how many</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Without a supervisor, through the day shown: %1</source>
        <comment>how many</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Ledger %1</source>
        <comment>a code of letters and figures</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Without a supervisor, restricted: %1</source>
        <comment>how many</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Only with a supervisor, restricted: %1</source>
        <comment>how many</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1, %2: %3</source>
        <comment>name, day, what is restricted</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>; </source>
        <comment>between restrictions</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Before you start</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Only while %1.</source>
        <comment>a condition</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Whoever is not named here may not use it. With a supervisor means: somebody who may supervise here stays beside you all the time.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The maker&apos;s manual, the limits card and the guards come first; local codes and a qualified instructor before this card.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Somebody hurt</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Stop the machine at its emergency stop and isolate it before anybody reaches into it. Help as you were taught, and leave everything as it is.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Call the local emergency number: ____________ (write it here)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>For %1</source>
        <comment>a mode of a machine</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 (%2)</source>
        <comment>a name, the last day</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>: %1</source>
        <comment>what a check-out left open</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Call %1.</source>
        <comment>a number</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Say where you are, what happened, how many are hurt.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Say: %1. What happened, how many are hurt.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>wm::app::RostersPage</name>
    <message>
        <source>Also people with &amp;nothing</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Who may use what</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Paper</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Letter</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A4</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>PDF</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Print</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Tier &amp;%1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>On %1, as known on %2, %3.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No rulebook is in force on that day: nobody may use anything.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Rulebook %1. People: %2. Machines: %3.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Save the roster as a PDF</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>roster.pdf</source>
        <comment>a file&apos;s name</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>PDF (*.pdf)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Roster saved as %1. Pages: %2.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Roster sent to %1.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The printer did not take the roster.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>See whether it is on, or save a PDF and print that.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Rosters</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>How it lies on paper</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>For a door: names by machine</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>For machines: a page each</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>For a desk: people by machines</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>For the wall: a card a machine</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>wm::app::SeatPage</name>
    <message>
        <source>quiz station</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>front desk</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>instructor</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>manager</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Who sits here?</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Everything entered from here on carries this name. Hand over when you leave.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>PIN</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Sit down</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Name</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Nobody is chosen</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Type part of your name and press Enter</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 sits here, as %2.</source>
        <translation type="unfinished"></translation>
    </message>
    <message numerus="yes">
        <source>after %n minutes</source>
        <translation type="unfinished">
            <numerusform></numerusform>
        </translation>
    </message>
    <message>
        <source>never</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Untouched, this computer goes back to nobody</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>wm::app::SecondFields</name>
    <message>
        <source>The rulebook asks for two: another instructor or manager looks at this and enters their own PIN.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The second person</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Their PIN</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>second person</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Nobody is chosen yet</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Type part of a name and choose with Enter</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>wm::app::SessionForm</name>
    <message>
        <source>%1 worked supervised: %2</source>
        <comment>who, machine</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Record the session</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Back</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>At what time it began</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>today</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>On which day</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>For how long: 45, or 1:30</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Supervised by</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>How it is known</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>it was seen: the supervisor could supervise then</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>it stands on a paper of the past</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What is noted when a machine is started and left need not be entered here.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What is noted when a machine is started and left need not be entered here. What is known only from a paper of the past a manager enters.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>time</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>It is not said when it began</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Type the time as 17:30, and its day</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>minutes</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>It is not said for how long</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Type the minutes, as 45</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>By this it would not be over yet</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Check the time and the minutes</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>supervisor</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>It is not said who supervised</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Choose them from the list</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Recorded: %1, %2 min on %3, supervised by %4.</source>
        <comment>who, minutes, machine, who</comment>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>wm::app::SheetBook</name>
    <message>
        <source>No rule in force asks for a check-out here, so nothing can be signed.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The run sheet for this machine counts only from %1, so nothing can be marked or signed before.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No run sheet has been issued for this machine, so nothing can be marked or signed here. A manager issues one on the page Sheets.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>wm::app::SheetChangeWords</name>
    <message>
        <source>New lines: %1.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Lines that ask otherwise: %1.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Lines that are no longer critical: %1.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Lines of revision %2 that are no longer asked: %1.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Lines stand in another order or section.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>It is for another machine class or check-out than before.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No line has changed.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The rules in force have no machine class %1: nobody is checked out on this sheet before they do.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The rules in force ask for no check-out %1 on this machine: nobody is checked out on this sheet before they do.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Nobody&apos;s standing would change: nobody has to be checked out again.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Whoever has not been checked out again by then falls back:</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>And on %1 days more.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>wm::app::SheetEditor</name>
    <message>
        <source>The run sheet&apos;s text</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The blank sheet as it is printed</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Back to the run sheets</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Revision %1 of this check-out counts already</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Write that one or a higher one</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A run sheet of this name has not been issued before.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>This revision of the check-out has been published: its sheet can be marked as soon as it counts.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>wm::app::SheetPages</name>
    <message>
        <source>The blank sheet as it is printed</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>wm::app::SheetView</name>
    <message>
        <source>shown</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>shown when asked</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>not shown</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>again?</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>yes</source>
        <comment>must be shown again</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>when asked</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Run sheet</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>line %1 of %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>critical</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the second time: %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>measured</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Measured</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The instrument&apos;s marks</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>line %1</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>wm::app::SheetsPage</name>
    <message>
        <source>a machine</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Name</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Revision</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Counts</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Lines</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>none has been issued</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the rules ask for one</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Revisions: %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Revisions: %1; machines without one: %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No run sheet has been issued yet</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>None of that name</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>All at once</source>
        <translation type="unfinished"></translation>
    </message>
    <message numerus="yes">
        <source>Take over the program&apos;s for %n machines that have none</source>
        <translation type="unfinished">
            <numerusform></numerusform>
        </translation>
    </message>
    <message>
        <source>From a file</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Open a run sheet&apos;s text</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The rules ask for the check-out %1 here, and no run sheet has been issued for it: nobody can be checked out before there is one.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>One comes with the program. It is a pattern: read it against the maker&apos;s manual first.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A manager issues it.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What can be done</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Begin with the program&apos;s</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Write one</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Take it over as it is</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Revision %1, issued on %2.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Machine</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Check-out</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Edit it into the next revision</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Look through it</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Save as a file</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What is on it</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1, critical of them %2</source>
        <comment>numbers of lines</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>lines: %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Taken over.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Save the run sheet as a file</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>run-sheet.txt</source>
        <comment>a file&apos;s name</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Sheets</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Begin with one of the program&apos;s</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Edit it</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Begin with the program&apos;s for</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Read every line against this machine and its maker&apos;s manual.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>wm::app::ShopWindows</name>
    <message>
        <source>Witnessmark</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The backup is being put back. This window goes on by itself.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The backup is in place. What was there before is kept as %1.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The shop&apos;s file is being opened. This window goes on by itself.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The shop is being read from its server. This window goes on by itself.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 This window goes on by itself once it can.</source>
        <comment>a sentence first</comment>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>wm::app::Side</name>
    <message>
        <source>today</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>now</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>On the day</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>As known on</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Somebody hurt, machine broken</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Nobody sits here</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Hand over</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Sit down</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>wm::app::StartForm</name>
    <message>
        <source>Back</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1: left again</source>
        <comment>machine</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>They have left it</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 started it at %2.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 started it at %2, supervised by %3.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>At what time it was left; empty: now</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>“%1” is no time of day. Type it as 17:30.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 has left: %2 min supervised are recorded.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 has left; the use is recorded.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 starts: %2</source>
        <comment>who, machine</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Start it</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1, in use by %2</source>
        <comment>unit, who</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The shop has no unit of this machine.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Which unit</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Supervised by</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>nobody: without a supervisor</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 is at %2 from now on.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 supervises several</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Go on</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1: %2</source>
        <comment>who, machine</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Who has left</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Start it all the same</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 was noted as gone at %2: it was left by then.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>At what time it was left</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>It was started at %1. Type at what time it was left, as 17:30.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 has left after less than a minute: no session and no use is recorded.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>wm::app::StartPage</name>
    <message>
        <source>An empty shop</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The demo shop, to look around in</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Witnessmark</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Which shop is this?</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Its name</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Its time zone</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Your given name</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Your family name</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Your PIN, six digits or more</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The PIN again</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Open the Desk</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The shop has no name yet</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Type one</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Somebody has to be the first manager</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Type your name</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The two PINs differ</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Type the same one twice</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Our shop, which is on a server already</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The server&apos;s name</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The shop&apos;s database there</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>This computer&apos;s login</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Its password</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Choose the file</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The file shop-root.crt, by which the server is known</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The file shop-root.crt</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Keys of servers (*.crt *.pem)</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>wm::app::StartView</name>
    <message>
        <source>Language</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Beside it</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Begin</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Leave it</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>An interpreter sits beside me</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Somebody reads it aloud to me</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Large type</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>This quiz has been begun: the same questions come again, with the time that is left.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Go on</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>nothing</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Lessons and quizzes</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1: what comes next?</source>
        <comment>what somebody is called</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Lesson: %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Quiz: %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1, counts now</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The rulebook asks for no lesson and no quiz.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Revision</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Parts</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1, each to be read to its end</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>How it stands</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Go through it</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Read it</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>wm::app::StripHeader</name>
    <message>
        <source>through</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>wm::app::StripList</name>
    <message>
        <source>Machines, by tier</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>wm::app::StripModel</name>
    <message>
        <source>Tier %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>paused</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1: %2</source>
        <comment>machine, standing</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1: %2, through %3</source>
        <comment>machine, standing, day</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1, %2</source>
        <comment>standing, what is restricted</comment>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>wm::app::ThoseThere</name>
    <message>
        <source>Somebody not named</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Who was there: a name and Enter, one after the other</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 %2</source>
        <comment>a person, was hurt</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Leave out</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Leave %1 out</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>“%1” is typed, and nobody is chosen</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Choose from the list with Enter, or empty the field</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>It is not said what part they had: %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Tick at least one, or leave them out</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>wm::app::TonightPanel</name>
    <message>
        <source>Due tonight</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Time</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Member</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Machine</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>With</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>How it stands</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>due</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>due in %1 min</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>arrived</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>arrived, check-out open</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>came late</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>came late, check-out open</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>did not come</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Tonight, %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1–%2</source>
        <comment>from, to</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1, %2</source>
        <comment>machine, unit</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Nobody is booked for today.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 has arrived.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 came late.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 did not come.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A visitor for the day…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>held, not for certain</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>On a line: A arrived, L came late, N did not come, Z none of that, Enter opens the person.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>marked by mistake</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What was marked of %1 is taken back.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>held, begun, still free</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>wm::app::TonightSide</name>
    <message>
        <source>%1, %2, with %3</source>
        <comment>who, machine, assessor</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Staff here</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Nobody on duty has come in.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Members here</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>, </source>
        <comment>between names</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Nobody has been noted as here.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Out of service</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No machine is out of service.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Check-outs open</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No check-out is open.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Backup</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1, %2</source>
        <comment>who, which quiz</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Quizzes offered</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1, %2: %3</source>
        <comment>who; when; why, and what to do</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>And %1 more: see the Diary.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Bookings that are no longer possible</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1: %2, since %3</source>
        <comment>who, machine, time</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1: %2, since %3, supervised by %4</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>At the machines</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Nobody is noted as at a machine.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Visitors for the day</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Who is here, and what is open</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 has left</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The visitor has left.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>(%1 is noted as gone since %2: enter when the machine was left)</source>
        <comment>name, time</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1, %2, on %3: on Check-outs</source>
        <comment>who, machine, day</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Here, and have not countersigned</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>wm::app::WaitingList</name>
    <message>
        <source>1 day</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>since today</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 days</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Waiting list</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>nobody</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>1 person, %1</source>
        <comment>how long</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 people, longest %2</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>wm::app::WhatFollows</name>
    <message>
        <source>What follows by the rules</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Bookings that are no longer possible</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Outside this program</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Local law may ask for a report within hours: see the notice beside this desk. Keep the scene as it is.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Recorded: a near miss at %1, %2. Thank whoever reported it.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Recorded: what happened at %1, %2.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1: %2 %3 from now on.</source>
        <comment>who, machine, only with a supervisor</comment>
        <translation type="unfinished"></translation>
    </message>
    <message numerus="yes">
        <source>And %n standings more: see the Journal.</source>
        <translation type="unfinished">
            <numerusform></numerusform>
        </translation>
    </message>
    <message>
        <source>Nobody&apos;s standing changed.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1, %2: %3</source>
        <comment>who; when; why, and what to do</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The machine</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 is out of service.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Put %1 out of service</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What %1 needs now</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Record something else</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Pause %1 for tonight</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What happened there is looked into</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 is out of service. Hang the tag on it now.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 is paused on every machine through today.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Still noted as at a machine</source>
        <translation type="unfinished"></translation>
    </message>
    <message numerus="yes">
        <source>And %n more: the Diary marks each of them.</source>
        <translation type="unfinished">
            <numerusform></numerusform>
        </translation>
    </message>
    <message>
        <source>%1 at %2, since %3. Once they have left it, note it at the Desk.</source>
        <comment>who, machine, time</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 at %2, since %3, supervised by %4. Where %4 cannot stay beside them, they stop now; note at the Desk that they left it.</source>
        <comment>who, machine, time, supervisor</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Note that %1 left the machine</source>
        <translation type="unfinished"></translation>
    </message>
    <message numerus="yes">
        <source>And %n more: find them at the Desk.</source>
        <translation type="unfinished">
            <numerusform></numerusform>
        </translation>
    </message>
</context>
<context>
    <name>wm::app::WhoIsHurt</name>
    <message>
        <source>Who is hurt</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Name or number, then Enter: whom to call for them is shown at once</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>For %1 call</source>
        <comment>whom to call follows</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Nobody is entered. Ask them, or whoever knows them.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>wm::app::WhoView</name>
    <message>
        <source>Member&apos;s number</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Go on</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Take a quiz: type your member&apos;s number, or hold your card to the reader.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Nobody here has the number %1. Type it as it stands on your card, or ask the desk.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>This card belongs to nobody here. Type your number instead, or ask the desk.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>wm::app::WorkEditor</name>
    <message>
        <source>Line</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What is wrong</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>now</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Issue it</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Save as a file</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Start over</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>what is new in it, in a sentence</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What is new in it</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Counts from</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>As it was issued</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Nothing is wrong with it</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What is wrong: %1</source>
        <comment>a number</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>day</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>That is no day</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Type it as 2026-12-01, or leave it empty for now</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Issued.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>wm::app::WorkFiles</name>
    <message>
        <source>Choose a file that can be read</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The file has more than 16 MiB</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Choose a smaller one</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Choose a place where you may write and that is not full</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Another picture of this name is there</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Save it in a folder of its own</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>wm::app::WorkPage</name>
    <message>
        <source>This is the text as it was left before, and not issued.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Text (*.txt);;All files (*)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Text (*.txt)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Saved as %1.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>in force</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>not published</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>to come</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>an earlier one</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>from %1</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>wm::app::WorkText</name>
    <message>
        <source>Revision %1 has been issued already</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Write a higher one</source>
        <translation type="unfinished"></translation>
    </message>
</context>
</TS>
