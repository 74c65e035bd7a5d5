//! haproxy, set up for a run: before the nodes, and before a database and its replica.

use bellyful_tests::postgres::free_port;
use bellyful_tests::stores::fresh_folder;
use std::process::{Child, Command};
use std::time::Duration;

pub struct Balancer {
    child: Child,
    pub port: u16,
}

impl Balancer {
    /// As in `deploy/front.cfg`, without TLS.
    pub async fn over_nodes(ports: &[u16]) -> Balancer {
        let mut rules = "mode http\n balance leastconn\n option httpchk GET /readyz\n option redispatch\n retries 2\n \
                         retry-on conn-failure empty-response\n default-server check inter 500 fall 2 rise 1\n"
            .to_owned();
        for port in ports {
            rules += &format!(" server n{port} 127.0.0.1:{port}\n");
        }
        Balancer::start(&rules).await
    }

    /// All to the first while it is there, else to the second.
    pub async fn over_databases(first: u16, second: u16) -> Balancer {
        let rules = format!(
            "mode tcp\n default-server check inter 500 fall 2 rise 1 on-marked-down shutdown-sessions\n \
             server first 127.0.0.1:{first}\n server second 127.0.0.1:{second} backup\n"
        );
        Balancer::start(&rules).await
    }

    async fn start(rules: &str) -> Balancer {
        let port = free_port();
        let times = "timeout connect 2s\n timeout client 1h\n timeout server 1h";
        let settings = format!("global\n maxconn 2000\nlisten all\n bind 127.0.0.1:{port}\n {times}\n {rules}");
        let file = fresh_folder("balancer").join("haproxy.cfg");
        std::fs::write(&file, settings).expect("our own folder");
        let child = Command::new("haproxy").arg("-q").arg("-db").arg("-f").arg(&file).spawn();
        let child = child.expect("haproxy is installed (Debian package haproxy)");
        for _ in 0..100 {
            if tokio::net::TcpStream::connect(("127.0.0.1", port)).await.is_ok() {
                // Those behind it count as there only once they have been looked at.
                tokio::time::sleep(Duration::from_secs(1)).await;
                return Balancer { child, port };
            }
            tokio::time::sleep(Duration::from_millis(50)).await;
        }
        panic!("haproxy did not start with {}", file.display());
    }
}

impl Drop for Balancer {
    fn drop(&mut self) {
        let _ = self.child.kill();
        let _ = self.child.wait();
    }
}
