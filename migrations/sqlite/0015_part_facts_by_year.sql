-- SQLite has no tables in parts; the number is kept in step with PostgreSQL.

SELECT 1;
