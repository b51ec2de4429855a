-- Every rung of everybody (or of one person) at :t by W's last rulebook. What depends on :t alone (from when a
-- record still counts, which revision is needed) was put into the rule tables when :t was chosen.
-- The text between braces is put in by sql_decisions.cpp: "" or a condition on one person.
WITH
paper AS MATERIALIZED (
  SELECT r.person, r.item FROM records r JOIN paper_rule USING (item)
  WHERE r.kind = 'document' AND r.voided IS NULL AND r.at BETWEEN since AND :t
    AND (r.until IS NULL OR r.until >= :today) {r}
  GROUP BY r.person, r.item),
born AS MATERIALIZED (
  SELECT person, born FROM (
    SELECT r.person, r.born, row_number() OVER (PARTITION BY r.person ORDER BY r.at DESC, r.recorded DESC, r.id DESC) AS n
    FROM records r WHERE r.kind = 'birth' AND r.voided IS NULL AND r.at <= :t {r})
  WHERE n = 1),
lesson AS MATERIALIZED (
  SELECT r.person, r.item FROM records r JOIN item_rule USING (item)
  WHERE r.kind = 'lesson' AND r.voided IS NULL AND r.at BETWEEN since AND :t AND r.revision >= needed {r}
  GROUP BY r.person, r.item),
quiz AS MATERIALIZED (
  SELECT r.person, r.item FROM records r JOIN item_rule USING (item)
  WHERE r.kind = 'quiz' AND r.voided IS NULL AND r.counts AND r.at BETWEEN since AND :t AND r.revision >= needed {r}
  GROUP BY r.person, r.item),
failed AS MATERIALIZED (
  SELECT r.person, r.item, max(r.at) AS at FROM records r
  WHERE r.kind = 'failed' AND r.voided IS NULL AND r.at <= :t {r}
  GROUP BY r.person, r.item),
incident AS MATERIALIZED (
  SELECT r.person, x.target, max(r.at) AS at FROM records r JOIN target x ON x.class = r.item AND r.severity <= x.renew_after_severity
  WHERE r.kind = 'incident' AND r.voided IS NULL AND r.at <= :t {r}
  GROUP BY r.person, x.target),
change AS MATERIALIZED (
  SELECT x.target, max(r.at) AS at FROM records r JOIN target x ON r.item IN (x.target, x.class) AND x.renew_after_change
  WHERE r.kind = 'change' AND r.voided IS NULL AND r.at <= :t
  GROUP BY x.target),
checkout AS MATERIALIZED (
  SELECT g.person, g.target FROM (
    SELECT r.person, x.target, max(r.at) AS at FROM records r JOIN target x ON x.target = r.item
    WHERE r.kind = 'passed' AND r.voided IS NULL AND r.counts AND r.at BETWEEN x.checkout_since AND :t
      AND r.revision >= x.checkout_needed {r}
    GROUP BY r.person, x.target) g
  LEFT JOIN failed f ON f.person = g.person AND f.item = g.target
  LEFT JOIN incident i ON i.person = g.person AND i.target = g.target
  LEFT JOIN change c ON c.target = g.target
  WHERE g.at >= max(ifnull(f.at, g.at), ifnull(i.at, g.at), ifnull(c.at, g.at))),
done AS MATERIALIZED (
  SELECT r.person, r.item AS target,
    count(*) FILTER (WHERE r.at >= x.uses_since) AS uses,
    sum(r.minutes) FILTER (WHERE r.kind = 'supervised' AND r.at >= x.minutes_since) AS minutes,
    count(*) FILTER (WHERE r.kind = 'supervised' AND r.at >= x.sessions_since) AS sessions
  FROM records r JOIN target x ON x.target = r.item
  WHERE r.kind IN ('use', 'supervised') AND r.voided IS NULL AND r.counts AND r.at BETWEEN :earliest AND :t {r}
  GROUP BY r.person, r.item),
suspended AS MATERIALIZED (
  SELECT DISTINCT r.person, x.target FROM records r
  JOIN target x ON r.scope = 'all' OR (r.scope = 'tier' AND r.item = x.tier) OR (r.scope = 'target' AND r.item IN (x.target, x.class))
  WHERE r.kind = 'suspend' AND r.voided IS NULL AND r.at <= :t AND (r.until IS NULL OR r.until >= :today) {r}
    AND NOT EXISTS (SELECT 1 FROM records e
                    WHERE e.kind = 'reinstate' AND e.ends = r.id AND e.voided IS NULL AND e.at <= :t)),
person AS MATERIALIZED (
  SELECT p.person, b.born,
    EXISTS (SELECT 1 FROM paper d WHERE d.person = p.person AND d.item = :induction) AS induction,
    EXISTS (SELECT 1 FROM paper d WHERE d.person = p.person AND d.item IN (:membership, :course)) AS member,
    EXISTS (SELECT 1 FROM paper d WHERE d.person = p.person AND d.item = :certificate) AS certificate,
    EXISTS (SELECT 1 FROM paper d WHERE d.person = p.person AND d.item = :refresher) AS refresher
  FROM people p LEFT JOIN born b USING (person) WHERE true {p}),
-- The gates that ask nothing about standings: s for the rung supervised, i for independent.
leaf AS MATERIALIZED (
  SELECT p.person, x.target, x.tier, x.below, p.certificate,
    p.induction AND p.born IS NOT NULL AND p.born <= x.born_by AND safe.item IS NOT NULL AND q.item IS NOT NULL
      AND (x.intro IS NULL OR intro.item IS NOT NULL) AND o.target IS NULL AS s,
    (x.tier > 1 OR p.member) AND c.target IS NOT NULL AND
      CASE x.tier
        WHEN 3 THEN ifnull(d.uses, 0) >= 2 OR ifnull(d.minutes, 0) >= 120
        WHEN 4 THEN (ifnull(d.uses, 0) >= 2) + (ifnull(d.sessions, 0) >= 1) + p.refresher >= 2
        ELSE ifnull(d.uses, 0) >= 1
      END AS i
  FROM person p CROSS JOIN target x
  LEFT JOIN lesson safe ON safe.person = p.person AND safe.item = x.safety
  LEFT JOIN lesson intro ON intro.person = p.person AND intro.item = x.intro
  LEFT JOIN quiz q ON q.person = p.person AND q.item = x.quiz
  LEFT JOIN checkout c ON c.person = p.person AND c.target = x.target
  LEFT JOIN done d ON d.person = p.person AND d.target = x.target
  LEFT JOIN suspended o ON o.person = p.person AND o.target = x.target),
tier1 AS MATERIALIZED (
  SELECT person, target, CASE WHEN NOT s THEN 0 WHEN i THEN 2 ELSE 1 END AS rung FROM leaf WHERE tier = 1),
sum1 AS MATERIALIZED (
  SELECT person, sum(rung = 2) AS independent, min(rung) >= 1 AS all_supervised FROM tier1 GROUP BY person),
tier2 AS MATERIALIZED (
  SELECT l.person, l.target,
    CASE WHEN NOT (l.s AND b.rung >= 1) THEN 0 WHEN l.i AND g.independent >= 1 THEN 2 ELSE 1 END AS rung
  FROM leaf l JOIN tier1 b ON b.person = l.person AND b.target = l.below JOIN sum1 g ON g.person = l.person
  WHERE l.tier = 2),
sum2 AS MATERIALIZED (SELECT person, sum(rung >= 1) AS supervised FROM tier2 GROUP BY person),
tier3 AS MATERIALIZED (
  SELECT l.person, l.target,
    CASE WHEN NOT l.s THEN 0 WHEN l.i AND b.rung = 2 AND g.supervised >= :supervised_below THEN 2 ELSE 1 END AS rung
  FROM leaf l JOIN tier2 b ON b.person = l.person AND b.target = l.below JOIN sum2 g ON g.person = l.person
  WHERE l.tier = 3),
sum3 AS MATERIALIZED (SELECT person, sum(rung = 2) AS independent FROM tier3 GROUP BY person),
tier4 AS (
  SELECT l.person, l.target,
    CASE WHEN NOT l.s THEN 0
         WHEN l.i AND b.rung = 2 AND (g.independent >= :independent_below OR (one.all_supervised AND l.certificate)) THEN 2
         ELSE 1 END AS rung
  FROM leaf l JOIN tier3 b ON b.person = l.person AND b.target = l.below JOIN sum3 g ON g.person = l.person
  JOIN sum1 one ON one.person = l.person
  WHERE l.tier = 4),
rungs AS (SELECT * FROM tier1 UNION ALL SELECT * FROM tier2 UNION ALL SELECT * FROM tier3 UNION ALL SELECT * FROM tier4)
