/* Lets the N-th write, sync or truncation of a process fail, and all after it where asked to.
   FAULT_AT: which one; FAULT_ERRNO: with what; FAULT_STAYS: 1 where the disk stays broken;
   FAULT_COUNT: file that gets the number of calls at the end. Only files named with
   "chargebench" count. */
#define _GNU_SOURCE
#include <dlfcn.h>
#include <errno.h>
#include <stdio.h>
#include <stdlib.h>
#include <string.h>
#include <sys/types.h>
#include <unistd.h>

static long calls;

static int ours(int fd) {
    char link[64], path[4096];
    snprintf(link, sizeof link, "/proc/self/fd/%d", fd);
    ssize_t length = readlink(link, path, sizeof path - 1);
    if (length < 0) return 0;
    path[length] = 0;
    return strstr(path, ".chargebench") != NULL;
}

static int fails(int fd) {
    int kept = errno;
    int fault = 0;
    if (ours(fd)) {
        const char *at = getenv("FAULT_AT"), *with = getenv("FAULT_ERRNO");
        const char *stays = getenv("FAULT_STAYS");
        long place = at ? atol(at) : 0;
        calls++;
        if (place && (calls == place || (stays && *stays == '1' && calls > place)))
            fault = with ? atoi(with) : EIO;
    }
    errno = fault ? fault : kept;
    return fault;
}

__attribute__((destructor)) static void tell(void) {
    const char *name = getenv("FAULT_COUNT");
    FILE *file = name ? fopen(name, "w") : NULL;
    if (file) { fprintf(file, "%ld", calls); fclose(file); }
}

#define REAL(name) ((__typeof__(&name))dlsym(RTLD_NEXT, #name))
ssize_t pwrite(int fd, const void *b, size_t n, off_t o) { return fails(fd) ? -1 : REAL(pwrite)(fd, b, n, o); }
ssize_t pwrite64(int fd, const void *b, size_t n, off64_t o) { return fails(fd) ? -1 : REAL(pwrite64)(fd, b, n, o); }
ssize_t write(int fd, const void *b, size_t n) { return fails(fd) ? -1 : REAL(write)(fd, b, n); }
int fsync(int fd) { return fails(fd) ? -1 : REAL(fsync)(fd); }
int fdatasync(int fd) { return fails(fd) ? -1 : REAL(fdatasync)(fd); }
int ftruncate(int fd, off_t n) { return fails(fd) ? -1 : REAL(ftruncate)(fd, n); }
int ftruncate64(int fd, off64_t n) { return fails(fd) ? -1 : REAL(ftruncate64)(fd, n); }
